import { expect, it } from 'vitest';
import { decayMoments } from '../../src/surge/decay-moments.ts';

/** By Simpson's rule on 4000 pieces. */
function integral(x: number, k: number): number {
  const pieces = 4000;
  let sum = 0;
  for (let n = 0; n <= pieces; n++) {
    const u = n / pieces;
    const weight = n === 0 || n === pieces ? 1 : n % 2 === 0 ? 2 : 4;
    sum += weight * Math.exp(-x * (1 - u)) * u ** k;
  }
  return sum / (3 * pieces);
}

it.each([0, 1e-9, 1e-3, 0.3, 0.999, 1, 1.001, 4, 30])('are the integrals at a decay of %d', (x) => {
  const moments = new Float64Array(6);
  decayMoments(x, moments);
  moments.forEach((moment, k) => {
    expect(Math.abs(moment / integral(x, k) - 1)).toBeLessThan(1e-9);
  });
});

it('is the drive itself, over the decay, where that is endless', () => {
  const moments = new Float64Array(4);
  decayMoments(1e12, moments);
  for (const moment of moments) expect(Math.abs(moment * 1e12 - 1)).toBeLessThan(1e-9);
});
