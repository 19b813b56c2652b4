import { rowStart } from './cholesky-update.ts';

/**
 * Solves L L' x = b in place for right hand sides that stand one after the other, `size` numbers each; L row after row
 * without gaps. Every row of L is read in order, once on the way down and once on the way up, for all of them.
 *
 * Source: G. H. Golub, C. F. Van Loan, Matrix Computations, section 3.1, row and column oriented substitution (from memory).
 */
export function choleskySolve(lower: Float64Array, size: number, unknowns: Float64Array): void {
  for (let row = 0; row < size; row++) {
    for (let first = 0; first < unknowns.length; first += size) solveRow(lower, unknowns, first, row);
  }
  for (let row = size - 1; row >= 0; row--) {
    for (let first = 0; first < unknowns.length; first += size) takeOffRow(lower, unknowns, first, row);
  }
}

function solveRow(lower: Float64Array, unknowns: Float64Array, first: number, row: number): void {
  const start = rowStart(row);
  let sum = 0;
  for (let k = 0; k < row; k++) sum += lower[start + k]! * unknowns[first + k]!;
  unknowns[first + row] = (unknowns[first + row]! - sum) / lower[start + row]!;
}

function takeOffRow(lower: Float64Array, unknowns: Float64Array, first: number, row: number): void {
  const start = rowStart(row);
  const unknown = unknowns[first + row]! / lower[start + row]!;
  unknowns[first + row] = unknown;
  for (let k = 0; k < row; k++) unknowns[first + k] = unknowns[first + k]! - lower[start + k]! * unknown;
}
