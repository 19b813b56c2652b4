import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { buildSync } from 'esbuild';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { writeWhole } from '../../src/shell/files.ts';

let root: string;
let folder: string;
let count = 0;

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'evenground-write-'));
});
beforeEach(() => {
  folder = join(root, String(count++));
  mkdirSync(folder);
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

describe('a write', () => {
  it('makes the folders on its way and leaves nothing beside the file', () => {
    writeWhole(join(folder, 'a', 'b', 'out.txt'), 'text');
    expect(readFileSync(join(folder, 'a', 'b', 'out.txt'), 'utf8')).toBe('text');
    expect(readdirSync(join(folder, 'a', 'b'))).toEqual(['out.txt']);
  });

  it('replaces a file by another', () => {
    writeFileSync(join(folder, 'out.txt'), 'a longer older text');
    writeWhole(join(folder, 'out.txt'), 'new');
    expect(readFileSync(join(folder, 'out.txt'), 'utf8')).toBe('new');
  });

  it('goes through a link and leaves the link', () => {
    writeFileSync(join(folder, 'real.txt'), 'old');
    symlinkSync('real.txt', join(folder, 'link.txt'));
    writeWhole(join(folder, 'link.txt'), 'new');
    expect(lstatSync(join(folder, 'link.txt')).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(folder, 'real.txt'), 'utf8')).toBe('new');
  });

  it.skipIf(!existsSync('/dev/null'))('never puts a file in the place of a device', () => {
    const before = statSync('/dev/null').rdev;
    writeWhole('/dev/null', 'text');
    expect(statSync('/dev/null').isCharacterDevice()).toBe(true);
    expect(statSync('/dev/null').rdev).toBe(before);
  });

  it('says why it failed, and that nothing was touched, when a folder of that name is there', () => {
    mkdirSync(join(folder, 'out'));
    expect(() => writeWhole(join(folder, 'out'), 'text')).toThrow(/this is a directory\. Nothing that was there/);
    expect(readdirSync(folder)).toEqual(['out']);
  });

  it('says why it failed when a part of the path is a file', () => {
    writeFileSync(join(folder, 'file'), 'kept');
    expect(() => writeWhole(join(folder, 'file', 'out.txt'), 'text')).toThrow(
      /a part of the path is a file|in the way/,
    );
    expect(readFileSync(join(folder, 'file'), 'utf8')).toBe('kept');
  });
});

/** One process that writes far more than a moment's worth into `out`. */
const megabytes = 96;
const writer = `
  import { writeWhole } from '${resolve('src/shell/files.ts')}';
  writeWhole(process.argv[2], Buffer.alloc(${megabytes} << 20, 'n'));
`;

describe('a write that is broken off', () => {
  let script: string;
  beforeAll(() => {
    script = join(root, 'writer.mjs');
    buildSync({
      stdin: { contents: writer, resolveDir: resolve('.'), loader: 'ts' },
      bundle: true,
      format: 'esm',
      platform: 'node',
      outfile: script,
    });
  });

  it.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)(
    'by %s leaves a whole file, and nothing beside it',
    async (signal) => {
      writeFileSync(join(folder, 'out.txt'), 'old');
      await breakOff(signal);
      const size = statSync(join(folder, 'out.txt')).size;
      expect([3, megabytes << 20]).toContain(size);
      expect(readdirSync(folder)).toEqual(['out.txt']);
    },
  );

  it('by a kill leaves the older file as it was', async () => {
    writeFileSync(join(folder, 'out.txt'), 'old');
    await breakOff('SIGKILL');
    expect(readFileSync(join(folder, 'out.txt'), 'utf8')).toBe('old');
  });

  async function breakOff(signal: NodeJS.Signals): Promise<void> {
    const child = spawn(process.execPath, [script, join(folder, 'out.txt')], { stdio: 'ignore' });
    const ended = once(child, 'exit');
    while (readdirSync(folder).length < 2 && child.exitCode === null) await wait(1);
    expect(child.exitCode, 'the write was over before it could be broken off').toBe(null);
    child.kill(signal);
    await ended;
  }

  it('for want of room leaves the older file as it was, and nothing beside it', () => {
    writeFileSync(join(folder, 'out.txt'), 'old');
    const result = spawnSync('bash', ['-c', `ulimit -f 1024; "${process.execPath}" "${script}" "${folder}/out.txt"`], {
      encoding: 'utf8',
    });
    expect(result.stderr).toContain('it would be larger than this disk or account allows.');
    expect(readFileSync(join(folder, 'out.txt'), 'utf8')).toBe('old');
    expect(readdirSync(folder)).toEqual(['out.txt']);
  });
});
