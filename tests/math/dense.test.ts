import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DenseFactor,
  type FactoredMatrix,
  factorCholesky,
  factorLu,
  solveFactored,
} from '../../src/math/dense.ts';

function ready(factor: DenseFactor): FactoredMatrix {
  if (!factor.ok) throw new Error(`row ${factor.failingRow}`);
  return factor;
}

const hilbert = (size: number): Float64Array =>
  Float64Array.from({ length: size * size }, (_, at) => 1 / (Math.floor(at / size) + (at % size) + 1));

describe('full matrices', () => {
  it('are solved with pivoting where the first pivot is 0, by hand: x = 2, y = 1', () => {
    const { solution, residual } = solveFactored(
      ready(factorLu(Float64Array.of(0, 3, 2, 1), 2)),
      Float64Array.of(3, 5),
    );
    expect(Array.from(solution)).toEqual([2, 1]);
    expect(residual).toBe(0);
  });

  // Inverse of the 4 x 4 Hilbert matrix, as printed in every textbook on it (from memory).
  it.each([
    ['LU', factorLu],
    ['Cholesky', factorCholesky],
  ] as const)('give the known inverse of a Hilbert matrix by %s', (_, factor) => {
    const unit = Float64Array.from({ length: 16 }, (__, at) => (at % 5 === 0 ? 1 : 0));
    const { solution } = solveFactored(ready(factor(hilbert(4), 4)), unit, 4);
    const known = [16, -120, 240, -140, -120, 1200, -2700, 1680, 240, -2700, 6480, -4200, -140, 1680, -4200, 2800];
    for (const [at, entry] of known.entries()) expect(solution[at]! / entry).toBeCloseTo(1, 11);
  });

  it('solve to the last digits, and say so', () => {
    const cases = fc
      .integer({ min: 1, max: 8 })
      .chain((size) =>
        fc.tuple(
          fc.constant(size),
          fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: size * size, maxLength: size * size }),
        ),
      );
    fc.assert(
      fc.property(cases, ([size, entries]) => {
        // a matrix and its transpose multiplied, and something on the diagonal: positive definite
        const matrix = new Float64Array(size * size);
        for (let at = 0; at < size * size; at++) {
          const [row, column] = [Math.floor(at / size), at % size];
          for (let k = 0; k < size; k++)
            matrix[at] = matrix[at]! + entries[row * size + k]! * entries[column * size + k]!;
          if (row === column) matrix[at] = matrix[at]! + 0.1;
        }
        const right = Float64Array.from({ length: size }, (_, row) => row + 1);
        for (const factor of [factorLu(matrix, size), factorCholesky(matrix, size)]) {
          expect(solveFactored(ready(factor), right).residual).toBeLessThan(1e-14);
        }
      }),
    );
  });

  it('name the row that makes a solve impossible', () => {
    expect(factorLu(Float64Array.of(1, 2, 2, 4), 2)).toMatchObject({ ok: false, failingRow: 0 });
    expect(factorLu(new Float64Array(4), 2)).toEqual({ ok: false, failingRow: 0, smallestPivot: 0 });
    expect(factorCholesky(Float64Array.of(1, 2, 2, 1), 2)).toMatchObject({ ok: false, failingRow: 1 });
    expect(factorCholesky(Float64Array.of(-1, 0, 0, 1), 2)).toMatchObject({ ok: false, failingRow: 0 });
  });

  it('refuse what is no square of numbers', () => {
    expect(() => factorLu(Float64Array.of(1, 2, 3), 2)).toThrow(RangeError);
    expect(() => factorCholesky(Float64Array.of(1, Number.NaN, 0, 1), 2)).toThrow('row 0, column 1');
    expect(() => solveFactored(ready(factorLu(hilbert(2), 2)), Float64Array.of(1))).toThrow(RangeError);
  });
});
