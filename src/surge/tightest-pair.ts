import { cholesky } from '../math/cholesky.ts';
import { choleskySolve } from '../math/cholesky-solve.ts';
import { rowStart } from '../math/cholesky-update.ts';

/** Two pieces that are coupled more tightly than metal can be: they lie in one another, or one is typed twice. */
export interface TightPair {
  readonly first: number;
  readonly second: number;
  /** |M| / sqrt(own inductances): 1 where the two are one and the same. */
  readonly coupling: number;
}

/**
 * The two pieces at fault where a matrix of partial inductances (row by row) is not positive definite, in order; null where
 * it is. A current pattern with no or negative magnetic energy is none of metal, so such a matrix is refused, never patched.
 *
 * A pair that already fails by itself comes first (the tightest of them). Else the first piece whose pivot fails, and the one
 * that has the largest part in the pattern without energy: its current times the root of its own inductance.
 */
export function tightestPair(matrix: Float64Array, size: number): TightPair | null {
  const { lower, failingRow } = cholesky(matrix, size);
  if (failingRow === null) return null;
  const worst = strongest(matrix, size);
  if (failingRow === 0 || worst.coupling >= 1 - size * Number.EPSILON) return worst;
  const pattern = matrix.slice(failingRow * size, failingRow * size + failingRow);
  choleskySolve(lower.subarray(0, rowStart(failingRow)), failingRow, pattern);
  const weight = (at: number) => Math.abs(pattern[at]!) * Math.sqrt(matrix[at * (size + 1)]!);
  let other = 0;
  for (let at = 1; at < failingRow; at++) if (weight(at) > weight(other)) other = at;
  return { first: other, second: failingRow, coupling: couplingOf(matrix, size, other, failingRow) };
}

function strongest(matrix: Float64Array, size: number): TightPair {
  let worst: TightPair = { first: 0, second: 0, coupling: 0 };
  for (let first = 0; first < size; first++) {
    for (let second = first + 1; second < size; second++) {
      const coupling = couplingOf(matrix, size, first, second);
      if (coupling > worst.coupling) worst = { first, second, coupling };
    }
  }
  return worst;
}

function couplingOf(matrix: Float64Array, size: number, i: number, j: number): number {
  return Math.abs(matrix[i * size + j]!) / Math.sqrt(matrix[i * (size + 1)]! * matrix[j * (size + 1)]!);
}
