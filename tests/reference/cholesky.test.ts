import { describe, expect, it } from 'vitest';
import { cholesky } from '../../src/math/cholesky.ts';
import { factorCholesky, solveFactored } from '../../src/math/dense.ts';
import { entryOf, positiveDefinite } from '../math/positive-definite.ts';
import { findPython } from './python.ts';

interface Answer {
  readonly lower: readonly (readonly number[])[] | null;
  readonly failingRow: number | null;
  readonly solution: readonly number[] | null;
}

const python = findPython(['scipy'], 'Cholesky factors against LAPACK');

function rowsOf(matrix: Float64Array, size: number): number[][] {
  return Array.from({ length: size }, (_, row) => Array.from(matrix.subarray(row * size, (row + 1) * size)));
}

/** Points in a box, 1 / distance between any two, and the most on the diagonal: the shape of an influence matrix. */
function ofPoints(size: number): Float64Array {
  const place = (n: number, k: number): number => 15 * Math.sin(n * [12.9, 78.2, 3.7][k]!);
  return Float64Array.from({ length: size * size }, (_, at) => {
    const [a, b] = [Math.floor(at / size), at % size];
    const squared = [0, 1, 2].reduce((sum, k) => sum + (place(a, k) - place(b, k)) ** 2, 0);
    return 1 / Math.sqrt(squared + 0.01);
  });
}

describe.skipIf(python === null)('Cholesky against LAPACK', () => {
  const sizes = [1, 2, 12, 71, 72, 73, 145, 193, 230];
  const matrices = sizes.flatMap((size) => [positiveDefinite(size), ofPoints(size)]);
  // each again with one pivot turned to minus itself
  const spoilt = matrices.map((matrix) => {
    const size = Math.sqrt(matrix.length);
    const row = size >> 1;
    const copy = matrix.slice();
    copy[row * (size + 1)] = copy[row * (size + 1)]! - 2 * entryOf(cholesky(matrix, size).lower, row, row) ** 2;
    return copy;
  });
  const answers = (): readonly Answer[] =>
    python!.run('cholesky.py', {
      matrices: [...matrices, ...spoilt].map((matrix) => rowsOf(matrix, Math.sqrt(matrix.length))),
    }) as readonly Answer[];

  it('has the same factors, solutions and failing rows', () => {
    const theirs = answers();
    matrices.forEach((matrix, at) => {
      const size = Math.sqrt(matrix.length);
      const factor = factorCholesky(matrix, size);
      if (!factor.ok) throw new Error(`size ${size}: row ${factor.failingRow}`);
      const { solution } = solveFactored(factor, new Float64Array(size).fill(1));
      let worst = 0;
      let farthest = 0;
      for (let i = 0; i < size; i++) {
        for (let j = 0; j <= i; j++) {
          const difference = entryOf(factor.factor, i, j) - theirs[at]!.lower![i]![j]!;
          worst = Math.max(worst, Math.abs(difference) / Math.sqrt(matrix[i * size + i]!));
        }
        farthest = Math.max(farthest, Math.abs(solution[i]! - theirs[at]!.solution![i]!));
      }
      expect(worst).toBeLessThan(1e-13);
      expect(farthest).toBeLessThan(1e-10);
    });
    spoilt.forEach((matrix, at) => {
      const { failingRow } = theirs[matrices.length + at]!;
      expect(failingRow).not.toBeNull();
      expect(factorCholesky(matrix, Math.sqrt(matrix.length))).toMatchObject({ ok: false, failingRow });
    });
  });
});
