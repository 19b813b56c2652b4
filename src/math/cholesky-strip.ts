import { rowStart } from './cholesky-update.ts';

/** Columns finished together, in two halves. */
export const stripWidth = 12;
const half = stripWidth / 2;

/**
 * Entries in columns [first, end) of all rows from `end` on, where the square of these columns on the diagonal is finished
 * and all products of columns before are taken off: row by row, x L' = row. At most `stripWidth` columns; the lower
 * triangle stands row after row without gaps.
 */
export function choleskyStrip(lower: Float64Array, size: number, first: number, end: number): void {
  strip.keepSquare(lower, first, end);
  for (let row = end; row < size; row++) strip.finish(lower, rowStart(row) + first, end - first);
}

/**
 * One row at a time, in arrays that exist once, as in `choleskyUpdate`. A half is written out: loops as short as its
 * columns would mostly be guessed wrong by the processor (measured: four times slower). Columns beyond the last are worked
 * out with whatever stands there, and not written back: no column depends on one to its right.
 */
const strip = (() => {
  /** The square row by row: a row's entries, and one over its pivot in their place on the diagonal. */
  const square = new Float64Array(stripWidth * stripWidth);
  const row = new Float64Array(stripWidth);

  const keepSquare = (lower: Float64Array, first: number, end: number): void => {
    square.fill(0);
    row.fill(0);
    for (let i = first; i < end; i++) {
      const at = (i - first) * stripWidth;
      for (let j = first; j < i; j++) square[at + j - first] = lower[rowStart(i) + j]!;
      square[at + i - first] = 1 / lower[rowStart(i) + i]!;
    }
  };
  const finishHalf = (first: number): void => {
    let at = first * stripWidth + first;
    const a = row[first]! * square[at]!;
    at += stripWidth;
    const b = (row[first + 1]! - a * square[at]!) * square[at + 1]!;
    at += stripWidth;
    const c = (row[first + 2]! - a * square[at]! - b * square[at + 1]!) * square[at + 2]!;
    at += stripWidth;
    const d = (row[first + 3]! - a * square[at]! - b * square[at + 1]! - c * square[at + 2]!) * square[at + 3]!;
    at += stripWidth;
    const ab = a * square[at]! + b * square[at + 1]!;
    const e = (row[first + 4]! - ab - c * square[at + 2]! - d * square[at + 3]!) * square[at + 4]!;
    at += stripWidth;
    const abc = a * square[at]! + b * square[at + 1]! + c * square[at + 2]!;
    const f = (row[first + 5]! - abc - d * square[at + 3]! - e * square[at + 4]!) * square[at + 5]!;
    row[first] = a;
    row[first + 1] = b;
    row[first + 2] = c;
    row[first + 3] = d;
    row[first + 4] = e;
    row[first + 5] = f;
  };
  const takeOffFirstHalf = (): void => {
    for (let column = half; column < stripWidth; column++) {
      const at = column * stripWidth;
      const left = row[0]! * square[at]! + row[1]! * square[at + 1]! + row[2]! * square[at + 2]!;
      const right = row[3]! * square[at + 3]! + row[4]! * square[at + 4]! + row[5]! * square[at + 5]!;
      row[column] = row[column]! - left - right;
    }
  };
  const finish = (lower: Float64Array, at: number, width: number): void => {
    for (let k = 0; k < width; k++) row[k] = lower[at + k]!;
    finishHalf(0);
    takeOffFirstHalf();
    finishHalf(half);
    for (let k = 0; k < width; k++) lower[at + k] = row[k]!;
  };
  return { keepSquare, finish };
})();
