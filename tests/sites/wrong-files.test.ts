import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readSiteBytes } from '../../src/site/read-site-bytes.ts';
import { sayProblem, sayQuestion } from '../../src/words/say-problem.ts';
import { askedFiles, type ExpectedFile, wrongFiles } from './wrong-files.ts';

const here = dirname(fileURLToPath(import.meta.url));
const read = ({ name, folder }: ExpectedFile) =>
  readSiteBytes(readFileSync(join(here, folder, `${name}.site.yaml`)), `${name}.site.yaml`);

/** What is said of the file, one sentence a line. */
function saidOf(file: ExpectedFile): string {
  const name = `${file.name}.site.yaml`;
  const { site, problems } = read(file);
  if (site === null) return problems.map((p) => `${sayProblem(p, name)}\n`).join('');
  return site.questions
    .map((q) => `${name}:${q.source.line}:${q.source.column}: ${q.path}: ${sayQuestion(q)}\n`)
    .join('');
}

/** The sentences as they were read and found good. With WRITE_GOLDEN set they are written anew, to be read again. */
function golden(file: ExpectedFile): string {
  const path = join(here, 'golden', `${file.name}.txt`);
  if (process.env.WRITE_GOLDEN !== undefined) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, saidOf(file));
  }
  return readFileSync(path, 'utf8');
}

const placesOf = (notes: readonly { readonly source: { line: number; column: number }; readonly key: string }[]) =>
  notes.map(({ source, key }) => ({ line: source.line, column: source.column, key }));

describe('a file that cannot be used', () => {
  it.each(wrongFiles.map((f) => [f.name, f] as const))('%s: every problem at its place, and no other', (_, file) => {
    const { site, problems } = read(file);
    expect(placesOf(problems)).toEqual(file.places);
    expect(site).toBeNull();
  });
});

describe('a file that is accepted with a question', () => {
  it.each(askedFiles.map((f) => [f.name, f] as const))('%s: every question at its place, and no other', (_, file) => {
    const { site, problems } = read(file);
    expect(problems).toEqual([]);
    expect(placesOf(site!.questions)).toEqual(file.places);
  });
});

describe('what is said of it', () => {
  const all = [...wrongFiles, ...askedFiles];

  it.each(all.map((f) => [f.name, f] as const))('%s', (_, file) => {
    const said = saidOf(file);
    expect(said).toBe(golden(file));
    expect(said.replaceAll(/`[^`]*`/g, '')).not.toMatch(/\{\w+\}|undefined|NaN|\[object/);
  });

  it('is kept for these files and no others', () => {
    const listed = (files: readonly ExpectedFile[], end: string) => files.map((f) => f.name + end).sort();
    expect(readdirSync(join(here, 'wrong')).sort()).toEqual(listed(wrongFiles, '.site.yaml'));
    expect(readdirSync(join(here, 'asked')).sort()).toEqual(listed(askedFiles, '.site.yaml'));
    expect(readdirSync(join(here, 'golden')).sort()).toEqual(listed(all, '.txt'));
  });
});
