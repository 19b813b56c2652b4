import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { starter } from '../../src/site/starter.ts';
import { type BuiltCommand, buildCommand, type Ran } from '../shell/built-command.ts';

let evenground: BuiltCommand;
let folder: string;
/** How long the check of an ordinary file takes here and now. */
let usualMs: number;
let slowest = { name: '', times: 0 };

beforeAll(() => {
  evenground = buildCommand();
  folder = mkdtempSync(join(tmpdir(), 'evenground-hostile-'));
  const file = join(folder, 'starter.site.yaml');
  writeFileSync(file, starter);
  const runs = [1, 2, 3].map(() => timed(() => evenground.run('check', file)).ms);
  usualMs = Math.min(...runs);
}, 120_000);
afterAll(() => {
  evenground.remove();
  rmSync(folder, { recursive: true, force: true });
  process.stdout.write(`slowest hostile file: ${slowest.name}, ${slowest.times.toFixed(1)} times an ordinary check\n`);
});

function timed<T>(run: () => T): { readonly result: T; readonly ms: number } {
  const began = performance.now();
  const result = run();
  return { result, ms: performance.now() - began };
}

/** Runs a check and sees that it takes no more than so many times an ordinary one. */
function checked(name: string, file: string, times: number): Ran {
  const { result, ms } = timed(() => evenground.run('check', file));
  if (ms / usualMs > slowest.times) slowest = { name, times: ms / usualMs };
  expect(ms / usualMs, name).toBeLessThan(times);
  return result;
}

function fileOf(name: string, content: string | Uint8Array): string {
  const file = join(folder, `${name.replaceAll(/\W+/g, '-')}.site.yaml`);
  writeFileSync(file, content);
  return file;
}

const lines = (count: number, line: (i: number) => string) =>
  Array.from({ length: count }, (_, i) => line(i)).join('\n');
const utf16 = (text: string, mark: string, bigEndian: boolean) => {
  const bytes = Buffer.from(mark + text, 'utf16le');
  return bigEndian ? bytes.swap16() : bytes;
};
const bomb = [
  'site:',
  '  name: x',
  '  note: &a0 [x, x, x, x, x, x, x, x, x, x]',
  ...Array.from({ length: 9 }, (_, i) => `  k${i}: &a${i + 1} [${Array(10).fill(`*a${i}`).join(', ')}]`),
].join('\n');

/** Name, what the file holds, place of the first thing said, what is said of it. */
const refused: readonly (readonly [name: string, content: () => string | Uint8Array, at: string, says: RegExp])[] = [
  // A list of 10 is 11 values; a list of 10 repeats of it 121, of those 1221: 110 + 1210 + 8 x 1221 is the first sum over 10000.
  ['an alias bomb', () => bomb, '6:47', /add more than 10000 values/],
  [
    'an anchor repeated ten thousand times',
    () => `site: {name: x}\nbars:\n  b: &b {note: [${'x, '.repeat(100)}]}\n${lines(9000, (i) => `  b${i}: *b`)}\n`,
    // A group with a list of 100 is 102 values: the 99th repeat is one too many.
    '102:8',
    /repeats with `\*` add more than 10000 values/,
  ],
  [
    '50 MB of lines',
    () => `site: {name: x}\n${'  # nothing here\n'.repeat(3_000_000)}`,
    '1:1',
    /at most 4 MiB are read/,
  ],
  ['50 MB on one line', () => `site: {name: ${'x'.repeat(50e6)}}\n`, '1:1', /at most 4 MiB are read/],
  ['100 000 brackets', () => `site: ${'['.repeat(100_000)}`, '1:47', /more than 40 levels/],
  ['100 000 braces', () => `site:\n  note: ${'{a: '.repeat(100_000)}`, '2:169', /more than 40 levels/],
  ['5000 dashes', () => `site:\n${'- '.repeat(5000)}x\n`, '2:1', /more than 40 levels/],
  ['2000 indents', () => lines(2000, (i) => `${' '.repeat(i)}a:`), '401:1', /more than 40 levels/],
  [
    'a section twice',
    () => 'site: {name: x}\nbars: none\nsite: {name: y}\n',
    '3:1',
    /`site` stands twice here, first on line 1/,
  ],
  [
    '100 000 sections alike',
    () => `site: {name: x}\n${'bars: none\n'.repeat(100_000)}`,
    '3:1',
    /`bars` stands twice here/,
  ],
  ['tabs', () => 'site:\n\tname: x\n', '2:1', /indented with tabs/],
  ['UTF-16', () => utf16('site: {name: x}\n', '\uFEFF', false), '1:1', /stored as UTF-16/],
  ['UTF-16, the other way round', () => utf16('site: {name: x}\n', '\uFEFF', true), '1:1', /stored as UTF-16/],
  ['UTF-16 without a mark', () => utf16('site: {name: x}\n', '', true), '1:1', /stored as UTF-16/],
  [
    'one byte that is no UTF-8',
    () => Buffer.from('site:\n  name: H\u00fcgel\n', 'latin1'),
    '2:10',
    /not stored as UTF-8/,
  ],
  ['UTF-8 cut in a letter', () => Buffer.from('site: {name: ü').subarray(0, -1), '1:14', /not stored as UTF-8/],
  ['NUL', () => 'site: {name: a\u0000b}\n', '1:15', /U\+0000/],
  [
    'a picture',
    () => Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]),
    '1:1',
    /UTF-8|UTF-16/,
  ],
  ['nothing', () => '', '1:1', /nothing is typed in this file/],
  [
    'millions of digits',
    () => `bars:\n  b: {area: ${'9'.repeat(3_900_000)} m2}\n`,
    '2:13',
    /cannot be read as a figure/,
  ],
  [
    'millions of letters for a wire',
    () => `conductors:\n  c: {wire: ${'6 '.repeat(1_900_000)}}\n`,
    '2:13',
    /cannot be read as a wire/,
  ],
  [
    'millions of letters for an id',
    () => `bars:\n  b: {on: ${'a'.repeat(3_900_000)}}\n`,
    '2:11',
    /no part has this name/,
  ],
  [
    'millions of marks for a point',
    () => `bars:\n  b: {on: ${'a@'.repeat(1_900_000)}}\n`,
    '2:11',
    /does not name a point|no place on a part/,
  ],
  ['10 001 parts', () => `bars:\n${lines(10_001, (i) => `  b${i}:`)}\n`, '10002:3', /10001 parts; at most 10000/],
  [
    '10 000 unknown names',
    () => `conductors:\n${lines(5000, (i) => `  c${i}: {from: a${i}, to: b${i}}`)}\n`,
    '2:14',
    /no part has this name/,
  ],
  [
    '9000 unknown fields on one line',
    () => `bars: {b: {${lines(9000, (i) => `k${i}: 1,`).replaceAll('\n', ' ')}}}\n`,
    '1:12',
    /there is no field `k0`/,
  ],
  [
    '60 000 wires lost in comments',
    () => `conductors:\n${lines(9000, (i) => `  c${i}: {wire: #6 copper}`)}\n`,
    '2:14',
    /starts a comment/,
  ],
];

describe('a hostile file is refused at its place, in words, in bounded time:', () => {
  it.each(refused.map(([name, ...rest]) => [name, rest] as const))(
    '%s',
    (name, [content, at, says]) => {
      const file = fileOf(name, content());
      const { code, signal, out, err } = checked(name, file, 25);
      rmSync(file);
      expect([code, signal, out]).toEqual([2, null, '']);
      const there = err.split('\n').filter((line) => line.startsWith(`${file}:${at}: `));
      expect(there.join('\n'), err.slice(0, 300)).toMatch(says);
      expect(err).toMatch(/: \d+ problems?; nothing was worked out\.\n$/);
      expect(err).not.toMatch(/^\s+at |fault of evenground/m);
    },
    120_000,
  );
});

describe('what is no file', () => {
  it('is refused by its name', () => {
    const { code, out, err } = checked('a directory', folder, 10);
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe(`${folder}: this is a directory. Name the site file in it.\n`);
  });

  it('nor is there, or has a file for a folder, or is a link to nothing', () => {
    const file = fileOf('plain', starter);
    symlinkSync('nowhere', join(folder, 'link'));
    for (const missing of [join(folder, 'none.site.yaml'), join(folder, 'link')]) {
      const { code, out, err } = checked('a missing file', missing, 10);
      expect([code, out]).toEqual([2, '']);
      expect(err).toBe(`${missing}: there is no such file. Check the name and the folder.\n`);
    }
    const { code, err } = checked('a file for a folder', join(file, 'x'), 10);
    expect(code).toBe(2);
    expect(err).toBe(`${file}/x: a part of the path is a file, not a directory.\n`);
  });

  it('or never ends', () => {
    const { code, out, err } = checked('/dev/zero', '/dev/zero', 10);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^\/dev\/zero:1:1: the file has .* at most 4 MiB are read/);
  });
});

describe('an odd file that is fine', () => {
  const plain = readFileSync('examples/marl-hill/marl-hill.site.yaml', 'utf8');
  const saidOf = (name: string, content: string) => {
    const inner = join(folder, name);
    mkdirSync(inner);
    writeFileSync(join(inner, 'x.site.yaml'), content);
    const { code, out, err } = checked(name, join(inner, 'x.site.yaml'), 20);
    return { code, out: out.replaceAll(inner, ''), err };
  };

  it('is read the same with line ends of any kind and with a byte order mark', () => {
    const usual = saidOf('usual', plain);
    expect(usual.code).toBe(1);
    expect(saidOf('crlf', plain.replaceAll('\n', '\r\n'))).toEqual(usual);
    expect(saidOf('bom', `\uFEFF${plain}`)).toEqual(usual);
    expect(saidOf('both', `\uFEFF${plain.replaceAll('\n', '\r\n')}`)).toEqual(usual);
  });

  it('of a hundred thousand empty lines, or of anchors that nothing repeats, is no burden', () => {
    expect(saidOf('empty lines', `${'\n'.repeat(390_000)}${starter}`).code).toBe(1);
    const anchored = starter.replaceAll(/: \{kind/g, ': &x {kind');
    expect(saidOf('anchors', anchored).code).toBe(1);
  });
});
