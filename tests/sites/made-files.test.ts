import { describe, expect, it } from 'vitest';
import { readSite } from '../../src/site/read-site.ts';
import { readSiteBytes } from '../../src/site/read-site-bytes.ts';
import { aliasLimit, depthLimit, markLimit, partLimit, siteFileLimit } from '../../src/site/reading/limits.ts';
import { standardWords } from '../../src/words/problems/standard-words.ts';
import { problemWords } from '../../src/words/problems.ts';
import { questionWords } from '../../src/words/question-words.ts';
import { sayProblem } from '../../src/words/say-problem.ts';
import { askedFiles, wrongFiles } from './wrong-files.ts';

/** Files too large, too deep or too odd to be kept: made here, each with what is said of it. */
interface Made {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly line: number;
  readonly column: number;
  readonly key: string;
  readonly says: RegExp;
}

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (c) => c.charCodeAt(0));
const utf16 = (text: string, mark: boolean): Uint8Array => {
  const bytes = [...text].flatMap((c) => [c.charCodeAt(0) & 0xff, c.charCodeAt(0) >> 8]);
  return Uint8Array.from(mark ? [0xff, 0xfe, ...bytes] : bytes);
};

const chain = Array.from({ length: 150 }, (_, i) => `  p${i}: {from: p${i + 1}, go: [1 ft north]}\n`).join('');

const made: readonly Made[] = [
  {
    name: 'more bytes than are read',
    bytes: utf8(`site: {name: x}\n${'# long\n'.repeat(siteFileLimit / 7 + 1)}`),
    line: 1,
    column: 1,
    key: 'file-too-large',
    says: /at most 4 MiB/,
  },
  {
    name: 'more values than a site has',
    bytes: utf8(`site: {note: [${'a,'.repeat(markLimit)}]}\n`),
    line: 1,
    column: 1,
    key: 'too-many-values',
    says: /400000 values/,
  },
  {
    name: 'more parts than a site has',
    bytes: utf8(`site: {name: x}\nbars:\n${Array.from({ length: partLimit + 1 }, (_, i) => `  b${i}:\n`).join('')}`),
    line: partLimit + 3,
    column: 3,
    key: 'too-many-parts',
    says: /10001 parts; at most 10000/,
  },
  {
    name: 'deep lists without a bracket',
    bytes: utf8(`site:\n  note:\n    ${'- '.repeat(depthLimit + 1)}a\n`),
    line: 3,
    column: 1,
    key: 'too-deep',
    says: /40 levels/,
  },
  {
    name: 'UTF-16 with its mark',
    bytes: utf16('site: {name: x}\n', true),
    line: 1,
    column: 1,
    key: 'file-utf-16',
    says: /Save it again as UTF-8/,
  },
  {
    name: 'UTF-16 without its mark',
    bytes: utf16('site: {name: x}\n', false),
    line: 1,
    column: 1,
    key: 'file-utf-16',
    says: /Save it again as UTF-8/,
  },
  {
    name: 'one letter of another encoding',
    bytes: latin1('site:\n  name: H\u00fcgel\n'),
    line: 2,
    column: 10,
    key: 'file-not-utf-8',
    says: /type this character again/,
  },
  {
    name: 'a control character',
    bytes: utf8('site:\n  name: Low\u0007 Field\n'),
    line: 2,
    column: 12,
    key: 'control-character',
    says: /U\+0007/,
  },
  {
    name: 'a name longer than YAML takes',
    bytes: utf8(`site:\n  ${'a'.repeat(1100)}: x\n`),
    line: 2,
    column: 3,
    key: 'yaml-key-long',
    says: /1024 characters/,
  },
  {
    name: 'places that stand on one another',
    bytes: utf8(`places:\n${chain}  p150: [0 ft, 0 ft]\n`),
    line: 103,
    column: 3,
    key: 'place-chain',
    says: /more than 100 others/,
  },
];

describe('a file that is made to be refused', () => {
  it.each(made.map((m) => [m.name, m] as const))('%s', (_, { bytes, line, column, key, says }) => {
    const { site, problems } = readSiteBytes(bytes, 'made.site.yaml');
    expect(site).toBeNull();
    expect(problems[0]).toMatchObject({ key, source: { line, column } });
    expect(sayProblem(problems[0]!, 'made.site.yaml')).toMatch(says);
  });

  it('is refused in a moment, whatever it holds', () => {
    const bomb = `site:\n  note: &a [${'x, '.repeat(50)}]\n  photo: [${'*a, '.repeat(aliasLimit / 10)}]\n`;
    const start = performance.now();
    expect(readSite(bomb, 'bomb').problems.map((p) => p.key)).toContain('alias-expansion');
    for (const { bytes } of made) readSiteBytes(bytes, 'made.site.yaml');
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});

describe('the wrong files together', () => {
  const provoked = new Set([...wrongFiles.flatMap((f) => f.places.map((p) => p.key)), ...made.map((m) => m.key)]);
  /** Said of a change that is asked for, not of a file. */
  const ofChanges = Object.keys(problemWords).filter((key) => key.startsWith('change-'));
  /** Said of the small files beside a site's, which have tests of their own. */
  const ofSideFiles = Object.keys(standardWords);

  it('show every problem there are words for', () => {
    expect(
      Object.keys(problemWords).filter((key) => !provoked.has(key) && ![...ofChanges, ...ofSideFiles].includes(key)),
    ).toEqual([]);
  });

  it('show every question there are words for', () => {
    const asked = new Set(askedFiles.flatMap((f) => f.places.map((p) => p.key)));
    expect(Object.keys(questionWords).filter((key) => !asked.has(key))).toEqual([]);
  });
});
