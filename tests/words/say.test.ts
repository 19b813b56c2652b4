import { describe, expect, it } from 'vitest';
import { ruleWords } from '../../src/words/rules/index.ts';
import { type Speech, say } from '../../src/words/say.ts';

const us: Speech = { terms: 'us', unitsFirst: 'us' };
const iec: Speech = { terms: 'iec', unitsFirst: 'si' };

describe('a message', () => {
  it('takes the term of the region, with a capital where the message has one', () => {
    expect(say('[Electrode], [electrode]', {}, us)).toBe('Grounding electrode, grounding electrode');
    expect(say('[Electrode], [electrode]', {}, iec)).toBe('Earth electrode, earth electrode');
  });

  it('puts the article that the term asks for before it', () => {
    expect(say('to an [electrode], by a [electrician]', {}, us)).toBe(
      'to a grounding electrode, by a licensed electrician',
    );
    expect(say('to a [electrode], a [surge protector]', {}, iec)).toBe('to an earth electrode, an SPD');
  });

  it('says a figure in both systems, the owner’s first', () => {
    expect(say('{lengthM}', { lengthM: 3.048 }, us)).toBe('10 ft (3.05 m)');
    expect(say('{lengthM}', { lengthM: 3.048 }, iec)).toBe('3.05 m (10 ft)');
  });

  it('says a figure of its own in both systems, the owner’s first', () => {
    // ASTM B258: gauge 6 is 13.30 mm²; 1 ft is 0.3048 m, 1 in 25.4 mm.
    expect(say('at least {=6 AWG} copper', {}, us)).toBe('at least 6 AWG (13.3 mm²) copper');
    expect(say('at least {=6 AWG} copper', {}, iec)).toBe('at least 13.3 mm² (6 AWG) copper');
    expect(say('{=8 in}, {=20 ft}', {}, us)).toBe('8 in (203 mm), 20 ft (6.1 m)');
    expect(say('{=8 in}, {=20 ft}', {}, iec)).toBe('203 mm (8 in), 6.1 m (20 ft)');
    expect(say('{=2/0 AWG}; {=100 mm2}', {}, iec)).toBe('67.4 mm² (2/0 AWG); 100 mm² (197 kcmil)');
  });

  it('refuses a figure of its own that nobody can read', () => {
    expect(() => say('{=6 gauge}', {}, us)).toThrow('{=6 gauge}');
    expect(() => say('{=99 AWG}', {}, us)).toThrow('{=99 AWG}');
  });

  it('joins a list, says a bare figure as it is, and an unknown one as unknown', () => {
    expect(say('{at}; {count}; {lengthM}', { at: ['a', 'b'], count: 2, lengthM: null }, us)).toBe('a, b; 2; unknown');
  });

  it('takes the word for one or for several', () => {
    const template = '[Electrode]{at?:s} {at} {at?is:are} apart';
    expect(say(template, { at: ['a'] }, us)).toBe('Grounding electrode a is apart');
    expect(say(template, { at: ['a', 'b'] }, us)).toBe('Grounding electrodes a, b are apart');
    expect(say(template, { at: 'a' }, us)).toBe('Grounding electrode a is apart');
    expect(say('{count} {count?wire:wires}', { count: 1 }, us)).toBe('1 wire');
    expect(say('{count} {count?wire:wires}', { count: 4 }, us)).toBe('4 wires');
  });

  it('fills a name inside the brackets of a line to type', () => {
    expect(say('`site.without: [{kind}]`', { kind: 'cable tv' }, us)).toBe('`site.without: [cable tv]`');
  });

  it('leaves a line of a site file as it is', () => {
    expect(say('such as `{bond: tower@2 ft}`', {}, us)).toBe('such as `{bond: tower@2 ft}`');
    expect(say('`[mast, radio]`', {}, us)).toBe('`[mast, radio]`');
  });

  it('never reads text that was filled in as a message', () => {
    expect(say('{at}', { at: '[electrode] {lengthM}', lengthM: 1 }, us)).toBe('[electrode] {lengthM}');
  });
});

/** Every sentence of a record of words, however deep. */
function sentencesOf(words: unknown): readonly string[] {
  if (typeof words === 'string') return [words];
  return Object.values(words as Record<string, unknown>).flatMap(sentencesOf);
}

describe('the sentences of the rules', () => {
  const sentences = sentencesOf(ruleWords);

  it('hold no figure that is written out in one order for everybody', () => {
    expect(sentences.filter((s) => /\d (?:AWG|ft|in|m|mm|mm²) \(\d/.test(s))).toEqual([]);
  });

  it('have figures of their own that can be read', () => {
    const own = sentences.filter((s) => s.includes('{='));
    expect(own.length).toBeGreaterThan(15);
    for (const s of own) expect(say(s, {}, us)).not.toContain('{=');
  });
});

it('says a or an as the term begins, small or capital', () => {
  const us = { terms: 'us', unitsFirst: 'us' } as const;
  const iec = { terms: 'iec', unitsFirst: 'si' } as const;
  expect(say('An [electrode] and a [electrode].', {}, us)).toBe('A grounding electrode and a grounding electrode.');
  expect(say('A [electrode].', {}, iec)).toBe('An earth electrode.');
});
