import { describe, expect, it } from 'vitest';
import { normalAbove, normalExceededBy } from '../../src/math/normal-distribution.ts';

/** Share above x, scipy.stats.norm.sf of scipy 1.10.1. */
const table = [
  [-8, 0.9999999999999993],
  [-4, 0.9999683287581669],
  [-2.5, 0.9937903346742238],
  [-1, 0.8413447460685429],
  [0, 0.5],
  [0.5, 0.3085375387259869],
  [1.6448536269514722, 0.050000000000000044],
  [2.9, 0.0018658133003840375],
  [3.1, 0.0009676032132183563],
  [5, 2.866515718791933e-7],
  [10, 7.61985302416047e-24],
] as const;

describe('the normal distribution', () => {
  it.each(table)('above %d lies %d', (x, share) => {
    expect(Math.abs(normalAbove(x) / share - 1)).toBeLessThan(1e-13);
    if (x > -6) expect(normalExceededBy(share)).toBeCloseTo(x, 9);
  });

  it('is symmetric, and its parts meet', () => {
    expect(normalAbove(1.2) + normalAbove(-1.2)).toBeCloseTo(1, 15);
    for (const joint of [-3, 3])
      expect(Math.abs(normalAbove(joint + 1e-12) / normalAbove(joint - 1e-12) - 1)).toBeLessThan(1e-10);
  });

  it.each([0, 1, -0.1, 2, Number.NaN])('a share of %d has no figure', (share) => {
    expect(() => normalExceededBy(share)).toThrow(RangeError);
  });

  it('of no number it has no share', () => {
    expect(() => normalAbove(Number.NaN)).toThrow(RangeError);
  });
});
