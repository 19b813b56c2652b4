import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type BuiltCommand, buildCommand, closedToOthers, somebodyElse } from './built-command.ts';

const site = 'examples/marl-hill/marl-hill.site.yaml';
let evenground: BuiltCommand;
let root: string;
let folder: string;
let count = 0;

beforeAll(() => {
  evenground = buildCommand();
  root = mkdtempSync(join(tmpdir(), 'evenground-way-'));
  chmodSync(root, 0o755);
});
beforeEach(() => {
  folder = join(root, String(count++));
  mkdirSync(folder);
});
afterAll(() => {
  evenground.remove();
  rmSync(root, { recursive: true, force: true });
});

/** Loudly, by name. */
function skipIfClosed(skip: (note: string) => never) {
  const closed = closedToOthers(evenground);
  if (closed === null) return;
  console.warn(closed);
  skip(closed);
}

describe('permission', () => {
  it('to read that is missing is said in a sentence, and is an input that cannot be used', ({ skip }) => {
    skipIfClosed(skip);
    const file = join(folder, 'locked.site.yaml');
    writeFileSync(file, readFileSync(site));
    chmodSync(file, 0o000);
    const { code, out, err } = evenground.bash(`$evenground check ${file}`, somebodyElse);
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe(`${file}: no permission. Check whose file it is.\n`);
  });

  it('to write that is missing is said in a sentence, and leaves the folder as it was', ({ skip }) => {
    skipIfClosed(skip);
    const file = join(folder, 'open.site.yaml');
    writeFileSync(file, readFileSync(site));
    writeFileSync(join(folder, 'out.json'), 'old');
    chmodSync(folder, 0o555);
    const { code, out, err } = evenground.bash(`$evenground check ${file} --json -o ${folder}/out.json`, somebodyElse);
    chmodSync(folder, 0o755);
    expect([code, out]).toEqual([4, '']);
    expect(err).toBe(
      `${folder}/out.json: could not be written: no permission. Check whose file it is. Nothing that was there has been touched.\n`,
    );
    expect(readdirSync(folder).sort()).toEqual(['open.site.yaml', 'out.json']);
    expect(readFileSync(join(folder, 'out.json'), 'utf8')).toBe('old');
  });
});

describe('a full disk', () => {
  it('leaves the older report as it was, and nothing beside it', () => {
    if (!canMount()) {
      process.stderr.write('SKIPPED: no small disk can be mounted here, so a full disk was not tried\n');
      return;
    }
    const { code, out } = evenground.bash(
      `unshare -m bash -c "mount -t tmpfs -o size=64k none ${folder} && echo -n old > ${folder}/marl-hill.html; ` +
        `$evenground report ${site} -o ${folder} 2>&1; echo code \\$?; ls -A ${folder}; cat ${folder}/marl-hill.html"`,
    );
    expect(code).toBe(0);
    expect(out).toBe(
      `${folder}/marl-hill.html: could not be written: the disk is full. Make room and run it again. ` +
        'Nothing that was there has been touched.\ncode 4\nmarl-hill.html\nold',
    );
  });

  it('in the size that an account allows does the same', () => {
    writeFileSync(join(folder, 'out.json'), 'old');
    const { code, err } = evenground.bash(`ulimit -f 16; $evenground check ${site} --json -o ${folder}/out.json`);
    expect(code).toBe(4);
    expect(err).toMatch(/larger than this disk or account allows\. Nothing that was there has been touched\.\n$/);
    expect(readdirSync(folder)).toEqual(['out.json']);
    expect(readFileSync(join(folder, 'out.json'), 'utf8')).toBe('old');
  });
});

function canMount(): boolean {
  return spawnSync('unshare', ['-m', 'mount', '-t', 'tmpfs', '-o', 'size=64k', 'none', tmpdir()]).status === 0;
}

describe('new', () => {
  it('never writes over a file, an empty one included, nor through a link', () => {
    for (const name of ['mine.site.yaml', 'empty.site.yaml']) {
      const file = join(folder, name);
      writeFileSync(file, name.startsWith('mine') ? 'site: mine\n' : '');
      const before = readFileSync(file);
      const { code, out, err } = evenground.run('new', file);
      expect([code, out]).toEqual([4, '']);
      expect(err).toBe(`${file}: is there already and was not touched. Name another file.\n`);
      expect(readFileSync(file)).toEqual(before);
    }
    symlinkSync('mine.site.yaml', join(folder, 'link.site.yaml'));
    expect(evenground.run('new', join(folder, 'link.site.yaml')).code).toBe(4);
    expect(readFileSync(join(folder, 'mine.site.yaml'), 'utf8')).toBe('site: mine\n');
  });
});

describe('names with spaces, quotes and other scripts', () => {
  it('are read, written and named as they are', () => {
    const file = join(folder, `мачта & "l'antenne" 1.site.yaml`);
    writeFileSync(file, readFileSync(site));
    const { out } = evenground.run('report', file, '-o', join(folder, 'my report'));
    expect(readdirSync(join(folder, 'my report')).sort()).toEqual([
      `мачта & "l'antenne" 1.html`,
      `мачта & "l'antenne" 1.study.json`,
    ]);
    expect(out).toContain(`мачта & "l'antenne" 1.html`);
  });
});

describe('an owner’s text on a terminal', () => {
  it('cannot steer it', () => {
    const file = join(folder, 'steer.site.yaml');
    const name = '"Club \\e]0;owned\\a\\e[2J\\u202E evil"';
    writeFileSync(file, `site: {name: ${name}, region: us, units: ft, service: none}\n`);
    const { out, err } = evenground.run('check', file);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there
    expect(out + err).not.toMatch(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/);
    expect(out).toContain('evil');
  });
});
