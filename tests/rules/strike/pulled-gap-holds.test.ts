import { describe, expect, it, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { checkOf } from '../heard.ts';
import { verdictsOf } from '../verdicts-of.ts';
import { factsWith, strikeSite } from './strike-site.ts';

const rule = 'pulled-gap-holds';
const pulled = (gap: string, end = 'loose') => `
antennas: {a: {kind: yagi, on: mast@9 m, touches_support: yes}}
lines: {feed: {kind: coax, path: [a, {plug: j1}, radio], lengths: [30 m, 1 m]}}
states: {storm: {open: [{at: j1, end: ${end}${gap}}]}}
`;
const text = (gap: string) => strikeSite({ more: pulled(gap) });

const verdicts = (typed: string, state: string | null) => verdictsOf(rule, typed, state);

describe('5 kV for each centimetre', () => {
  const judge = (value: number, gapM: { low: number; high: number } | null) =>
    checkOf(rule, factsWith(text(''), { gaps: [{ line: 'feed', gapM, peak: { value, atS: 1e-6 } }] })).map((v) => [
      v.is,
      v.because.key,
    ]);
  it.each([
    [15_000, 'met'],
    [-15_000, 'met'],
    [15_001, 'not met'],
    [-15_001, 'not met'],
  ])('%i V over 3 cm: %s', (value, is) => {
    expect(judge(value, { low: 0.03, high: 0.03 })[0]![0]).toBe(is);
  });
  it('of a gap that is not known well', () => {
    expect(judge(15_000, { low: 0.02, high: 0.04 })).toEqual([['cannot tell', 'gap unknown']]);
    expect(judge(21_000, { low: 0.02, high: 0.04 })).toEqual([['not met', 'narrow']]);
    expect(judge(100, null)).toEqual([['cannot tell', 'gap unknown']]);
  });
});

describe('a line from the mast to the radio, pulled at the radio', () => {
  // 30 kA into some 30 ohm of one rod against another that a bond of 20 m joins: a hundred kilovolt and more
  it.each([
    [', gap: 1 cm', 'not met feed: narrow'],
    [', gap: 1/2 in', 'not met feed: narrow'],
    [', gap: 3 m', 'met feed: wide'],
    [', gap: 10 ft', 'met feed: wide'],
    ['', 'cannot tell feed: gap unknown'],
  ])('%s: %s', (gap, expected) => expect(verdicts(text(gap), 'storm')).toEqual([expected]));

  it('is not asked as typed, where nothing is pulled', () => {
    expect(verdicts(text(', gap: 1 cm'), null)).toEqual([]);
  });

  it('cannot be told without soil', () => {
    const dry = strikeSite({ more: pulled(', gap: 1 cm'), soil: '' });
    expect(verdicts(dry, 'storm')).toEqual(['cannot tell : no soil']);
  });
});

test('not asked of a site where no state pulls anything', () => {
  const facts = factsWith(strikeSite(), {});
  expect(checkOf(rule, facts).map((v) => v.is)).toEqual(['not applicable']);
});

everyOutcome(rule);
