import { expect, it } from 'vitest';
import { plainYaml } from '../../src/site/reading/plain-yaml.ts';
import { readYaml } from '../../src/site/reading/read-yaml.ts';
import { newReport } from '../../src/site/reading/report.ts';
import { sourceText } from '../../src/site/reading/source-text.ts';
import { type Chance, chance } from './chance.ts';
import { mutateText } from './mutate-text.ts';
import { siteTexts } from './site-texts.ts';

/** What the YAML library makes of a text: the tree where it finds nothing wrong, else that it does. */
function byLibrary(text: string): string {
  const report = newReport(sourceText(text));
  const { tree, lone } = readYaml(text, { path: '', report });
  return report.problems.length > 0 || lone ? 'something is wrong' : JSON.stringify(tree);
}

/** Whether the text was plain; where it was, both readers must agree. */
function isAlike(text: string): boolean {
  const tree = plainYaml(text);
  if (tree !== null) expect(JSON.stringify(tree), text).toBe(byLibrary(text));
  return tree !== null;
}

/** Some lines of a file, as a text of their own or under a key. */
function someLines(text: string, by: Chance): string {
  const lines = text.split('\n');
  const from = by.below(lines.length);
  const taken = lines.slice(from, from + 1 + by.below(12));
  const indent = /^ */.exec(taken[0]!)![0].length;
  const isOut = taken.every((line) => line.slice(0, indent).trim() === '');
  return isOut ? taken.map((line) => line.slice(indent)).join('\n') : ['key:', ...taken].join('\n');
}

const texts = siteTexts();

it('every example is plain, and is what the library reads', () => {
  const odd = texts.filter(({ text }) => !isAlike(text)).map(({ file }) => file);
  expect(odd.filter((file) => file.startsWith('examples'))).toEqual([]);
});

it.each([
  'a: 1\nb:\n  c: 2\n',
  'a:\n- 1\n- b: 2\n  c: 3\nd: {e: [1, -2, f:g], h: "i j"}',
  'a:\n\n  # said of b\n  b: x#y # z\n\n# end\n',
  'a:\n  {b: 1,\n   c: 2,}\n',
  'a:\nb:   \n',
  'a: [~, null, Null, "null"]\n',
])('%j is plain', (text) => {
  expect(isAlike(text)).toBe(true);
});

it.each([
  '',
  '- a\n',
  ' a: 1\n',
  'a: 1\na: 2\n',
  'a: b: c\n',
  'a: b\n  c\n',
  'a: &x 1\nb: *x\n',
  'a: !!str 1\n',
  'a: |\n  b\n',
  'a: "b\\n"\n',
  "a: 'it''s'\n",
  '"a": 1\n',
  'a: {b}\n',
  'a: {b: 1\n}\n',
  'a: [1,, 2]\n',
  'a: [b: 1]\n',
  'a: {b:1}\n',
  'a:\tb\n',
  '---\na: 1\n',
  'a:\n  b: 1\n c: 2\n',
  'a: {b: 1} c\n',
  'a: # nothing\n',
])('%j is for the library', (text) => {
  expect(plainYaml(text)).toBe(null);
});

it('agrees with the library on every mutated text that it takes for plain', () => {
  const by = chance(20_260_507);
  let plain = 0;
  for (let i = 0; i < 6000; i++) {
    const text = someLines(by.pick(texts).text, by);
    const mutated = by.often(0.3) ? text : new TextDecoder().decode(mutateText(text, by));
    if (isAlike(mutated)) plain++;
  }
  expect(plain).toBeGreaterThan(1500);
});
