import { choleskyStrip, stripWidth } from './cholesky-strip.ts';
import { choleskyUpdate, rowStart, updateDepth } from './cholesky-update.ts';

export interface CholeskyFactor {
  /** Lower triangle, row after row without gaps. Not to be used where a row failed. */
  readonly lower: Float64Array;
  /** First row whose pivot was not above rounding error; null: none. */
  readonly failingRow: number | null;
  /** Least pivot relative to its own diagonal, or that of the failing row. */
  readonly smallestPivot: number;
}

/**
 * Lower triangle L with L L' = A for a symmetric positive definite matrix, row by row; the upper triangle is not read.
 * Panels of columns: strips of a panel are finished from left to right, then their products are taken off all that is right
 * of the panel. Pivots come in the order of the rows, so the first that fails is the one that fails row by row.
 *
 * Source: G. H. Golub, C. F. Van Loan, Matrix Computations, section 4.2, block Cholesky (from memory).
 */
export function cholesky(matrix: Float64Array, size: number): CholeskyFactor {
  const lower = lowerOf(matrix, size);
  const pivots: Pivots = { matrix, lower, size, smallest: Number.POSITIVE_INFINITY };
  for (let panel = 0; panel < size; panel += updateDepth) {
    const panelEnd = Math.min(size, panel + updateDepth);
    for (let strip = panel; strip < panelEnd; strip += stripWidth) {
      const stripEnd = Math.min(panelEnd, strip + stripWidth);
      if (strip > panel) choleskyUpdate(lower, size, panel, strip - panel, strip, stripEnd);
      const failingRow = finishDiagonal(pivots, strip, stripEnd);
      if (failingRow !== null) return { lower, failingRow, smallestPivot: pivots.smallest };
      choleskyStrip(lower, size, strip, stripEnd);
    }
    choleskyUpdate(lower, size, panel, panelEnd - panel, panelEnd, size);
  }
  return { lower, failingRow: null, smallestPivot: pivots.smallest };
}

interface Pivots {
  readonly matrix: Float64Array;
  readonly lower: Float64Array;
  readonly size: number;
  smallest: number;
}

/** The square of a strip on the diagonal, row by row; the row that failed, or null. */
function finishDiagonal(pivots: Pivots, strip: number, stripEnd: number): number | null {
  const { matrix, lower, size } = pivots;
  for (let row = strip; row < stripEnd; row++) {
    finishRow(lower, row, strip);
    const start = rowStart(row);
    const rest = lower[start + row]! - rowProduct(lower, start, start, strip, row);
    const diagonal = matrix[row * size + row]!;
    const pivot = diagonal > 0 ? rest / diagonal : diagonal;
    // not `<`: what is no number fails too
    const isAbove = pivot > size * Number.EPSILON;
    pivots.smallest = isAbove ? Math.min(pivots.smallest, pivot) : pivot;
    if (!isAbove) return row;
    lower[start + row] = Math.sqrt(rest);
  }
  return null;
}

/** Entries of a row from column `strip` to its diagonal, by the finished rows of these numbers. */
function finishRow(lower: Float64Array, row: number, strip: number): void {
  const start = rowStart(row);
  for (let column = strip; column < row; column++) {
    const above = rowStart(column);
    const rest = lower[start + column]! - rowProduct(lower, start, above, strip, column);
    lower[start + column] = rest / lower[above + column]!;
  }
}

function rowProduct(lower: Float64Array, a: number, b: number, from: number, end: number): number {
  let sum = 0;
  for (let k = from; k < end; k++) sum += lower[a + k]! * lower[b + k]!;
  return sum;
}

function lowerOf(matrix: Float64Array, size: number): Float64Array {
  const lower = new Float64Array(rowStart(size));
  for (let row = 0; row < size; row++) {
    lower.set(matrix.subarray(row * size, row * size + row + 1), rowStart(row));
  }
  return lower;
}
