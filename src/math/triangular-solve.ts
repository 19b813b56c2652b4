import { rowStart } from './cholesky-update.ts';

/** X of C X = B for a lower triangle C (row after row without gaps) and B of `size` rows; in place of B. */
export function solveLower(lower: Float64Array, size: number, columns: Float64Array): void {
  const count = columns.length / size;
  for (let row = 0; row < size; row++) {
    const start = rowStart(row);
    const own = row * count;
    for (let before = 0; before < row; before++) {
      const factor = lower[start + before]!;
      if (factor === 0) continue;
      takeRow(columns, own, before * count, factor, count);
    }
    const pivot = 1 / lower[start + row]!;
    for (let k = 0; k < count; k++) columns[own + k] = columns[own + k]! * pivot;
  }
}

/** The inner loop in a function of its own: the engine compiles it once and for all. */
function takeRow(columns: Float64Array, own: number, other: number, factor: number, count: number): void {
  for (let k = 0; k < count; k++) columns[own + k] = columns[own + k]! - factor * columns[other + k]!;
}

/** X of C' X = B, likewise. */
export function solveUpper(lower: Float64Array, size: number, columns: Float64Array): void {
  const count = columns.length / size;
  for (let row = size - 1; row >= 0; row--) {
    const start = rowStart(row);
    const own = row * count;
    const pivot = 1 / lower[start + row]!;
    for (let k = 0; k < count; k++) columns[own + k] = columns[own + k]! * pivot;
    for (let above = 0; above < row; above++) {
      const factor = lower[start + above]!;
      if (factor === 0) continue;
      takeRow(columns, above * count, own, factor, count);
    }
  }
}
