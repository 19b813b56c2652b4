import { rowStart } from './cholesky-update.ts';

/** Columns finished together, one entry after the other. */
export const stripWidth = 12;

/**
 * Entries in columns [first, end) of all rows from `end` on, where the square of these columns on the diagonal is finished
 * and all products of columns before are taken off: row by row, x L' = row. At most `stripWidth` columns; the lower
 * triangle stands row after row without gaps.
 */
export function choleskyStrip(lower: Float64Array, size: number, first: number, end: number): void {
  strip.keepSquare(lower, first, end);
  // the last row of an odd number stands for both
  for (let row = end; row < size; row += 2) {
    strip.finish(lower, rowStart(row) + first, rowStart(Math.min(row + 1, size - 1)) + first, end - first);
  }
}

/** Two rows at a time, in arrays that exist once, as in `choleskyUpdate`. */
const strip = (() => {
  /** Column by column: a column's entries one below the other, and one over each pivot. */
  const square = new Float64Array(stripWidth * stripWidth);
  const inverse = new Float64Array(stripWidth);
  const rowA = new Float64Array(stripWidth);
  const rowB = new Float64Array(stripWidth);

  const keepSquare = (lower: Float64Array, first: number, end: number): void => {
    for (let row = first; row < end; row++) {
      const start = rowStart(row);
      for (let column = first; column < row; column++) {
        square[(column - first) * stripWidth + row - first] = lower[start + column]!;
      }
      inverse[row - first] = 1 / lower[start + row]!;
    }
  };
  const finish = (lower: Float64Array, a: number, b: number, width: number): void => {
    for (let k = 0; k < width; k++) {
      rowA[k] = lower[a + k]!;
      rowB[k] = lower[b + k]!;
    }
    for (let k = 0; k < width; k++) {
      const xa = rowA[k]! * inverse[k]!;
      const xb = rowB[k]! * inverse[k]!;
      lower[a + k] = xa;
      lower[b + k] = xb;
      for (let after = k + 1; after < width; after++) {
        const entry = square[k * stripWidth + after]!;
        rowA[after] = rowA[after]! - xa * entry;
        rowB[after] = rowB[after]! - xb * entry;
      }
    }
  };
  return { keepSquare, finish };
})();
