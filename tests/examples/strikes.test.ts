import { describe, expect, it } from 'vitest';
import { strikeStudy } from '../../src/study/strike-study.ts';
import { notFinite } from '../not-finite.ts';
import { exampleFiles, readExample } from './study-of-example.ts';

const usual = { at: null, currentA: null, wave: null, between: [] };
const strikes = exampleFiles().map((name) => ({
  name,
  strike: strikeStudy(readExample(name).site!, { ...usual, state: null }),
}));

describe('the usual strike into an example', () => {
  it.each(strikes)('$name has no figure that is no number', ({ strike }) => {
    expect(notFinite(strike)).toEqual([]);
  });

  const solved = strikes.filter(({ strike }) => strike.refused === null);

  it.each(solved)('$name balances its energy and is stepped finely enough', ({ strike: { solve } }) => {
    expect(solve!.energyShare).toBeLessThan(1e-3);
    expect(solve!.errorShare).toBeLessThan(1e-3);
  });

  it('is marked as beyond the quasi-static in fewer than half of all differences that are printed', () => {
    const all = solved.flatMap(({ strike }) => strike.differences);
    expect(all.length).toBeGreaterThan(100);
    expect(all.filter((d) => d.isBeyond).length).toBeLessThan(all.length / 2);
  });

  it('is worked out for most of those that have a mast or an antenna', () => {
    const struck = strikes.filter(({ name }) => {
      const { supports, antennas } = readExample(name).site!;
      return supports.length + antennas.length > 0;
    });
    expect(solved.length).toBeGreaterThan(struck.length / 2);
  });
});
