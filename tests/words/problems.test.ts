import { describe, expect, it } from 'vitest';
import { defaultWords } from '../../src/words/default-words.ts';
import { problemWords } from '../../src/words/problems.ts';
import { questionWords } from '../../src/words/question-words.ts';
import { sayDefault, sayProblem, sayQuestion } from '../../src/words/say-problem.ts';
import { unionMembers, usedKeys } from './message-keys.ts';

const inSite = usedKeys('src/site');
const keysBy = (...calls: readonly string[]) =>
  [...new Set(inSite.filter((used) => calls.includes(used.by)).map((used) => used.key))].sort();
const unitFaults = unionMembers('src/units/quantity.ts', 'QuantityFault');
const wireFaults = unionMembers('src/materials/wire.ts', 'WireFault');
const sorted = (words: Readonly<Record<string, unknown>>) => Object.keys(words).sort();

describe('words for what is wrong with a file', () => {
  it('finds the keys that the reader hands on, so that the comparisons below compare something', () => {
    expect(keysBy('refuse')).toEqual(
      expect.arrayContaining(['id-unknown', 'member-none', 'yaml-two-documents', 'negative']),
    );
    expect(keysBy('ask')).toEqual(expect.arrayContaining(['kind-near', 'point-above-top', 'point-beyond-end']));
    expect(unitFaults).toContain('range-reversed');
    expect(wireFaults).toContain('wire-size-zero');
  });

  it('exist for every problem, and for no other', () => {
    const used = new Set([...keysBy('refuse', 'refused', 'slip'), ...unitFaults, ...wireFaults]);
    expect(sorted(problemWords)).toEqual([...used].sort());
  });

  it('exist for every question, and for no other', () => {
    expect(sorted(questionWords)).toEqual(keysBy('ask'));
  });

  it('exist for every default that is taken, and for no other', () => {
    expect(sorted(defaultWords)).toEqual(keysBy('assume'));
  });

  it('say what is wrong without a full stop and what to do with one', () => {
    for (const [key, { wrong, todo }] of Object.entries(problemWords)) {
      expect(wrong, key).not.toMatch(/[.!?]$/);
      expect(todo, key).toMatch(/[.?]$/);
    }
    for (const [key, words] of Object.entries(questionWords)) expect(words, key).toMatch(/[.?]$/);
    for (const [key, words] of Object.entries(defaultWords)) expect(words, key).toMatch(/[.]$/);
  });

  it('never promise and never blame', () => {
    const all = JSON.stringify([problemWords, questionWords, defaultWords]);
    expect(all).not.toMatch(/\b(?:safe|safely|illegal|invalid|error|fatal|illegally|please|oops)\b/i);
  });
});

describe('a problem in words', () => {
  const problem = {
    source: { line: 12, column: 5 },
    path: 'conductors.c1.to',
    key: 'id-unknown',
    values: { id: 'main-pannel' },
    near: 'main-panel',
  };

  it('starts with the place and the field, and ends with what to do', () => {
    expect(sayProblem(problem, 'hill.site.yaml')).toBe(
      'hill.site.yaml:12:5: conductors.c1.to: `main-pannel`: no part has this name; did you mean `main-panel`? ' +
        'Use the name of a part in this file, or add the part to its section.',
    );
  });

  it('has a full stop where there is no near name, and no path where it is about the whole file', () => {
    const whole = { ...problem, path: '', key: 'file-empty', values: {}, near: null };
    expect(sayProblem(whole, 'x.yaml')).toMatch(/^x\.yaml:12:5: nothing is typed in this file\. Start /);
  });

  it('keeps text of the file on one line, without what would move a terminal about, and not too long', () => {
    const odd = { ...problem, values: { id: `a\u001b[2Jb\n${'c'.repeat(5000)}` }, near: null };
    const said = sayProblem(odd, 'x.yaml');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these must not be there.
    expect(said).not.toMatch(/[\u0000-\u001f]/);
    expect(said.length).toBeLessThan(600);
  });

  it('does not read text of the file as a placeholder', () => {
    expect(sayProblem({ ...problem, values: { id: '{sections}' }, near: null }, 'x')).toContain(
      '`{sections}`: no part',
    );
  });

  it('says something even of a key that has no words', () => {
    expect(sayProblem({ ...problem, key: 'constructor' }, 'x')).toContain('it cannot be used (constructor)');
    expect(sayQuestion({ key: 'toString', values: {} })).toContain('toString');
    expect(sayDefault('toString')).not.toBe('');
  });
});
