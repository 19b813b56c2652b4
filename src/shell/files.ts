import { createHash } from 'node:crypto';
import {
  closeSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { exitCode, Stop } from './exit-code.ts';

/** Bytes of a file up to a limit and one more, so that a reader can say that it is too large without loading it all. */
export function readBytes(path: string, limit: number): Uint8Array {
  try {
    if (statSync(path).isDirectory())
      throw new Stop(exitCode.input, `${path}: this is a directory. Name the site file in it.`);
    const file = openSync(path, 'r');
    try {
      return readUpTo(file, limit + 1);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    throw error instanceof Stop ? error : new Stop(exitCode.input, `${path}: ${reasonOf(error)}`);
  }
}

function readUpTo(file: number, most: number): Uint8Array {
  const chunks: Buffer[] = [];
  let total = 0;
  while (total < most) {
    const chunk = Buffer.alloc(Math.min(1 << 20, most - total));
    const read = readSync(file, chunk, 0, chunk.length, null);
    if (read === 0) break;
    chunks.push(chunk.subarray(0, read));
    total += read;
  }
  return Buffer.concat(chunks);
}

/**
 * Writes a file whole or leaves what was there untouched: a temporary file beside it, flushed, then renamed. A link is
 * followed; what is no file (a device, a pipe) is written to and never replaced.
 */
export function writeWhole(path: string, content: string | Uint8Array): void {
  const bytes = typeof content === 'string' ? Buffer.from(content, 'utf8') : content;
  finishBeforeSignals();
  try {
    mkdirSync(dirname(path), { recursive: true });
    if (isStream(path)) writeTo(path, bytes);
    else replaceFile(realPath(path), bytes);
  } catch (error) {
    throw new Stop(
      exitCode.output,
      `${path}: could not be written: ${reasonOf(error)} Nothing that was there has been touched.`,
    );
  }
}

function replaceFile(path: string, bytes: Uint8Array): void {
  const temporary = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    writeTo(temporary, bytes);
    renameSync(temporary, path);
  } catch (error) {
    rmSync(temporary, { force: true });
    throw error;
  }
}

function writeTo(path: string, bytes: Uint8Array): void {
  const file = openSync(path, 'w');
  try {
    writeAll(file, bytes);
    if (!isStream(path)) fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

function isStream(path: string): boolean {
  const found = statSync(path, { throwIfNoEntry: false });
  return found !== undefined && !found.isFile() && !found.isDirectory();
}

function realPath(path: string): string {
  return statSync(path, { throwIfNoEntry: false }) === undefined ? path : realpathSync(path);
}

const signals = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;
let listening = false;

/** From the first write on a signal waits until the write is done or undone, so that no temporary file is left. */
function finishBeforeSignals(): void {
  if (listening) return;
  listening = true;
  for (const [signal, code] of Object.entries(signals)) process.on(signal, () => process.exit(code));
}

function writeAll(file: number, bytes: Uint8Array): void {
  for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
}

/** SHA-256 of the bytes, hexadecimal. */
export function checksumOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file. Check the name and the folder.',
  EACCES: 'no permission. Check whose file it is.',
  EPERM: 'no permission. Check whose file it is.',
  EFBIG: 'it would be larger than this disk or account allows.',
  EDQUOT: 'your share of the disk is full. Make room and run it again.',
  ENOSPC: 'the disk is full. Make room and run it again.',
  EROFS: 'this disk can only be read. Name another folder with -o.',
  EISDIR: 'this is a directory.',
  ENOTDIR: 'a part of the path is a file, not a directory.',
  EEXIST: 'a file of that name is in the way.',
  EMFILE: 'too many files are open.',
};

function reasonOf(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code ?? '';
  return reasons[code] ?? `${code || String(error)}.`;
}
