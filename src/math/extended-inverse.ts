import { DoubleDouble } from './double-double.ts';

/** A symmetric inverse of about 32 digits (row by row, high and low parts), or the row that makes it impossible. */
export type ExtendedInverse =
  | { readonly ok: true; readonly high: Float64Array; readonly low: Float64Array }
  | { readonly ok: false; readonly failingRow: number };

/**
 * Inverse of a symmetric positive definite matrix of ordinary numbers, worked out in double-double by L D Lt.
 * `failingRow` is the first row whose leading block is not positive definite, to 1e-14 of its diagonal (what is smaller
 * cannot be told from the rounding of the matrix itself). Meant for some hundred rows.
 */
export function extendedInverse(matrix: Float64Array, size: number): ExtendedInverse {
  if (matrix.length !== size * size) throw new RangeError(`expected ${size} rows of ${size} numbers`);
  const work = { high: Float64Array.from(matrix), low: new Float64Array(size * size), size };
  for (let row = 0; row < size; row++) {
    if (!factorRow(work, row, matrix[row * size + row]!)) return { ok: false, failingRow: row };
  }
  const inverse = { high: new Float64Array(size * size), low: new Float64Array(size * size), size };
  for (let column = 0; column < size; column++) solveColumn(work, inverse, column);
  return { ok: true, high: inverse.high, low: inverse.low };
}

interface Extended {
  readonly high: Float64Array;
  readonly low: Float64Array;
  readonly size: number;
}

/** Least pivot, relative to its diagonal, that tells a positive definite matrix from one that is not. */
const LEAST_PIVOT = 1e-14;

/** Below the diagonal: L times D first, L once its column is done. On it: D. */
function factorRow({ high, low, size }: Extended, row: number, diagonal: number): boolean {
  const sum = new DoubleDouble();
  for (let column = 0; column <= row; column++) {
    const at = row * size + column;
    sum.set(high[at]!, low[at]!);
    for (let before = 0; before < column; before++) {
      const a = row * size + before;
      const b = column * size + before;
      // a holds L D of this row until its pivot is known
      sum.subtractProduct(high[a]!, low[a]!, high[b]!, low[b]!);
    }
    if (column === row) sum.set(high[at]!, low[at]!);
    high[at] = sum.high;
    low[at] = sum.low;
  }
  for (let before = 0; before < row; before++) {
    const at = row * size + before;
    const pivot = before * size + before;
    const [scaledHigh, scaledLow] = [high[at]!, low[at]!];
    sum.set(scaledHigh, scaledLow).divide(high[pivot]!, low[pivot]!);
    high[at] = sum.high;
    low[at] = sum.low;
    const own = row * size + row;
    sum.set(high[own]!, low[own]!).subtractProduct(scaledHigh, scaledLow, high[at]!, low[at]!);
    high[own] = sum.high;
    low[own] = sum.low;
  }
  return high[row * size + row]! > LEAST_PIVOT * diagonal;
}

function solveColumn({ high, low, size }: Extended, inverse: Extended, column: number): void {
  const sum = new DoubleDouble();
  for (let row = column; row < size; row++) {
    sum.set(row === column ? 1 : 0);
    for (let before = column; before < row; before++) {
      const factor = row * size + before;
      const known = before * size + column;
      sum.subtractProduct(high[factor]!, low[factor]!, inverse.high[known]!, inverse.low[known]!);
    }
    store(inverse, row, column, sum);
  }
  for (let row = size - 1; row >= 0; row--) {
    const at = row * size + column;
    sum.set(inverse.high[at]!, inverse.low[at]!).divide(high[row * size + row]!, low[row * size + row]!);
    for (let after = row + 1; after < size; after++) {
      const factor = after * size + row;
      const known = after * size + column;
      sum.subtractProduct(high[factor]!, low[factor]!, inverse.high[known]!, inverse.low[known]!);
    }
    store(inverse, row, column, sum);
  }
}

function store(into: Extended, row: number, column: number, value: DoubleDouble): void {
  into.high[row * into.size + column] = value.high;
  into.low[row * into.size + column] = value.low;
}
