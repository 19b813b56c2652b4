import { describe, expect, it } from 'vitest';
import { agreementWords } from '../../src/words/agreement-words.ts';
import { checkWords } from '../../src/words/check-words.ts';
import { notStated } from '../../src/words/not-stated.ts';
import { ownStandardWords } from '../../src/words/own-standard-words.ts';
import { ruleWords } from '../../src/words/rules/index.ts';
import { say } from '../../src/words/say.ts';
import type { Terms } from '../../src/words/terms.ts';
import { toolWords } from '../../src/words/tool-words.ts';

/**
 * Words that one side says and the other never does: from the table of terms of the collection of clauses (its section 10),
 * words that both sides use left out. `ground` and `earth` themselves are among them: never both on one page.
 */
const only: Readonly<Record<Terms, readonly string[]>> = {
  us: [
    'grounding electrode',
    'ground rod',
    'ground ring',
    'ground plate',
    'counterpoise',
    'bonding jumper',
    'equipment grounding conductor',
    'grounded conductor',
    'intersystem bonding termination',
    'grounding bus',
    'single-point ground',
    'grounding',
    'grounded',
    'concrete-encased electrode',
    'ground terminal',
    'strike termination device',
    'resistance to ground',
    'ground resistance',
    'authority having jurisdiction',
    'licensed electrician',
  ],
  iec: [
    'earth electrode',
    'earth rod',
    'earth-termination',
    'earthing',
    'earthed',
    'main earthing terminal',
    'equipotential bonding bar',
    'entry bonding bar',
    'air-termination',
    'resistance to earth',
    'earth resistance',
    'extraneous-conductive-part',
    'exposed-conductive-part',
    'qualified electrician',
    'SPD',
    'earth',
  ],
};

/** Every sentence with the key under which it stands. */
function sentences(words: unknown, path: string): readonly (readonly [string, string])[] {
  if (typeof words === 'string') return [[path, words]];
  if (words === null || typeof words !== 'object') return [];
  return Object.entries(words).flatMap(([key, inner]) => (key === 'tools' ? [] : sentences(inner, `${path}.${key}`)));
}

const all = [
  ...sentences(ruleWords, 'rules'),
  ...sentences(notStated, 'not stated'),
  ...sentences(toolWords, 'tools'),
  ...sentences(ownStandardWords, 'own standard'),
  ...sentences(agreementWords, 'agreements'),
  ...sentences(checkWords, 'check'),
];

/**
 * Fields and lines of a file stand between backticks and are no words of a region; nor are the id of a rule and the name of a
 * kind of antenna.
 */
function foreign(template: string, terms: Terms): readonly string[] {
  const text = say(template, {}, { terms, unitsFirst: 'si' })
    .replace(/`[^`]*`/g, '')
    .replace(/ground planes?/gi, '');
  return only[terms === 'us' ? 'iec' : 'us'].filter((word) => {
    const flags = word === word.toUpperCase() ? 'u' : 'iu';
    return new RegExp(`(?<![\\p{L}-])${word}s?(?![\\p{L}-])`, flags).test(text);
  });
}

describe.each(['us', 'iec'] as const)('what is said in the words of %s', (terms) => {
  it('has no word that only the other side says', () => {
    const wrong = all.flatMap(([path, text]) => {
      const found = foreign(text, terms);
      return found.length === 0 ? [] : [`${path}: ${found.join(', ')}`];
    });
    expect(wrong).toEqual([]);
  });
});

it('a word of the other side would be found', () => {
  expect(foreign('Drive an earth rod.', 'us')).toEqual(['earth rod', 'earth']);
  expect(foreign('Drive a ground rod.', 'iec')).toEqual(['ground rod']);
  expect(foreign('Drive a [rod]; type `earth:`.', 'us')).toEqual([]);
});
