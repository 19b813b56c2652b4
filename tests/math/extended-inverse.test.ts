import { describe, expect, it } from 'vitest';
import { extendedInverse } from '../../src/math/extended-inverse.ts';
import { add, type Fraction, fraction, multiply } from './exact.ts';

/** Largest |R G - 1| of an inverse G, worked out in exact fractions. */
function defect(matrix: Float64Array, size: number): number {
  const inverse = extendedInverse(matrix, size);
  if (!inverse.ok) throw new Error(`row ${inverse.failingRow}`);
  let worst = 0;
  for (let at = 0; at < size * size; at++) {
    const [row, column] = [Math.floor(at / size), at % size];
    let sum: Fraction = fraction(row === column ? -1 : 0);
    for (let k = 0; k < size; k++) {
      const entry = add(fraction(inverse.high[k * size + column]!), fraction(inverse.low[k * size + column]!));
      sum = add(sum, multiply(fraction(matrix[row * size + k]!), entry));
    }
    worst = Math.max(worst, Math.abs(Number((sum.over * 10n ** 50n) / sum.under)) / 1e50);
  }
  return worst;
}

describe('inverse of 32 digits', () => {
  it('times the matrix is 1 to 1e-28 for electrodes from 2 ohm to 5 megohm', () => {
    const own = [2, 30, 450, 5e6, 12];
    const matrix = Float64Array.from({ length: 25 }, (_, at) => {
      const [i, j] = [Math.floor(at / 5), at % 5];
      return i === j ? own[i]! : 0.15 * Math.sqrt(own[i]! * own[j]!);
    });
    expect(defect(matrix, 5)).toBeLessThan(1e-25);
  });

  it('stays good where ordinary numbers lose 10 digits', () => {
    const hilbert = Float64Array.from({ length: 64 }, (_, at) => 1 / (Math.floor(at / 8) + (at % 8) + 1));
    expect(defect(hilbert, 8)).toBeLessThan(1e-19);
  });

  it('names the first row that is not positive definite', () => {
    expect(extendedInverse(Float64Array.of(2, 0, 0, 0, 1, 3, 0, 3, 1), 3)).toEqual({ ok: false, failingRow: 2 });
    expect(extendedInverse(Float64Array.of(0), 1)).toEqual({ ok: false, failingRow: 0 });
  });
});
