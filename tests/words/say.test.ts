import { describe, expect, it } from 'vitest';
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

  it('joins a list, says a bare figure as it is, and an unknown one as unknown', () => {
    expect(say('{at}; {count}; {lengthM}', { at: ['a', 'b'], count: 2, lengthM: null }, us)).toBe('a, b; 2; unknown');
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
