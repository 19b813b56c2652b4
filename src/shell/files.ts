import { createHash } from 'node:crypto';
import { closeSync, fsyncSync, mkdirSync, openSync, readSync, renameSync, rmSync, statSync, writeSync } from 'node:fs';
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

/** Writes a file whole or leaves what was there untouched: a temporary file beside it, flushed, then renamed. */
export function writeWhole(path: string, content: string | Uint8Array): void {
  const temporary = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    mkdirSync(dirname(path), { recursive: true });
    const file = openSync(temporary, 'w');
    try {
      writeAll(file, typeof content === 'string' ? Buffer.from(content, 'utf8') : content);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(temporary, path);
  } catch (error) {
    rmSync(temporary, { force: true });
    throw new Stop(
      exitCode.output,
      `${path}: could not be written: ${reasonOf(error)} Nothing that was there has been touched.`,
    );
  }
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
