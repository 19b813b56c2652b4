import { cholesky } from './cholesky.ts';
import { choleskySolve } from './cholesky-solve.ts';

/**
 * Solves with a full matrix that say how well they did. Matrices are row by row in one Float64Array.
 *
 * Source: G. H. Golub, C. F. Van Loan, Matrix Computations, algorithms 3.4.1 and 4.2.1 (from memory).
 */

/** A matrix taken apart, ready for many right hand sides, or the row at which that failed. */
export type DenseFactor = FactoredMatrix | FailedFactor;

export interface FactoredMatrix {
  readonly ok: true;
  readonly kind: 'lu' | 'cholesky';
  readonly size: number;
  /** The matrix itself, for the residual. */
  readonly matrix: Float64Array;
  /** Both triangles (LU), or the lower one, row after row without gaps (Cholesky). */
  readonly factor: Float64Array;
  /** Row of the matrix that stands in each row of the factor. */
  readonly rowOrder: Int32Array;
  /** Least pivot, relative to the largest entry of its own column (LU) or to its own diagonal (Cholesky). */
  readonly smallestPivot: number;
}

export interface FailedFactor {
  readonly ok: false;
  /** Row of the matrix whose pivot was not above rounding error, and the pivot, relative as above. */
  readonly failingRow: number;
  readonly smallestPivot: number;
}

export interface DenseSolution {
  /** Row by row: `size` rows, one column per right hand side. */
  readonly solution: Float64Array;
  /** Largest |b - A x| over the largest (|A| |x| + |b|) of all rows: near 1e-16 for a good solve. */
  readonly residual: number;
  readonly worstRow: number;
}

/** LU with the largest pivot of each column; any square matrix of finite numbers. */
export function factorLu(matrix: Float64Array, size: number): DenseFactor {
  checkSquare(matrix, size);
  const factor = Float64Array.from(matrix);
  const rowOrder = Int32Array.from({ length: size }, (_, row) => row);
  const scale = columnSizes(matrix, size);
  let smallestPivot = Number.POSITIVE_INFINITY;
  for (let step = 0; step < size; step++) {
    swapRows(factor, rowOrder, size, step, largestInColumn(factor, size, step));
    const pivot = Math.abs(factor[step * size + step]!) / scale[step]!;
    // not `<`: a column of zeros gives 0/0
    if (!(pivot > size * Number.EPSILON)) return { ok: false, failingRow: rowOrder[step]!, smallestPivot: pivot || 0 };
    smallestPivot = Math.min(smallestPivot, pivot);
    eliminateBelow(factor, size, step);
  }
  return { ok: true, kind: 'lu', size, matrix, factor, rowOrder, smallestPivot };
}

/** Cholesky, for a symmetric positive definite matrix; the upper triangle is not read. */
export function factorCholesky(matrix: Float64Array, size: number): DenseFactor {
  checkSquare(matrix, size);
  const { lower, failingRow, smallestPivot } = cholesky(matrix, size);
  if (failingRow !== null) return { ok: false, failingRow, smallestPivot };
  const rowOrder = Int32Array.from({ length: size }, (_, row) => row);
  return { ok: true, kind: 'cholesky', size, matrix, factor: lower, rowOrder, smallestPivot };
}

/** Solves for `columns` right hand sides at once (`size` rows of `columns` numbers) and measures the result. */
export function solveFactored(factored: FactoredMatrix, rightHandSides: Float64Array, columns = 1): DenseSolution {
  const { size, rowOrder } = factored;
  if (rightHandSides.length !== size * columns) throw new RangeError(`expected ${size} rows of ${columns} numbers`);
  const unknowns = new Float64Array(size * columns);
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < columns; column++) {
      unknowns[column * size + row] = rightHandSides[rowOrder[row]! * columns + column]!;
    }
  }
  if (factored.kind === 'cholesky') choleskySolve(factored.factor, size, unknowns);
  else for (let first = 0; first < unknowns.length; first += size) solveLu(factored, unknowns, first);
  const measured = measure(factored, unknowns, rightHandSides, columns);
  return { solution: rowByRow(unknowns, size, columns), ...measured };
}

function checkSquare(matrix: Float64Array, size: number): void {
  if (matrix.length !== size * size) throw new RangeError(`expected ${size} rows of ${size} numbers`);
  for (let at = 0; at < matrix.length; at++) {
    if (Number.isFinite(matrix[at])) continue;
    throw new RangeError(`row ${Math.floor(at / size)}, column ${at % size} is not a finite number`);
  }
}

function columnSizes(matrix: Float64Array, size: number): Float64Array {
  const largest = new Float64Array(size);
  for (let at = 0; at < matrix.length; at++) {
    largest[at % size] = Math.max(largest[at % size]!, Math.abs(matrix[at]!));
  }
  return largest;
}

function largestInColumn(factor: Float64Array, size: number, step: number): number {
  let best = step;
  for (let row = step + 1; row < size; row++) {
    if (Math.abs(factor[row * size + step]!) > Math.abs(factor[best * size + step]!)) best = row;
  }
  return best;
}

function swapRows(factor: Float64Array, rowOrder: Int32Array, size: number, a: number, b: number): void {
  if (a === b) return;
  const kept = factor.slice(a * size, (a + 1) * size);
  factor.copyWithin(a * size, b * size, (b + 1) * size);
  factor.set(kept, b * size);
  [rowOrder[a], rowOrder[b]] = [rowOrder[b]!, rowOrder[a]!];
}

function eliminateBelow(factor: Float64Array, size: number, step: number): void {
  const pivot = factor[step * size + step]!;
  for (let row = step + 1; row < size; row++) {
    const share = factor[row * size + step]! / pivot;
    factor[row * size + step] = share;
    if (share === 0) continue;
    for (let column = step + 1; column < size; column++) {
      factor[row * size + column] = factor[row * size + column]! - share * factor[step * size + column]!;
    }
  }
}

/** One right hand side, from `first` on. */
function solveLu({ size, factor }: FactoredMatrix, unknowns: Float64Array, first: number): void {
  for (let row = 1; row < size; row++) {
    unknowns[first + row] = unknowns[first + row]! - product(factor, row * size, unknowns, first, row);
  }
  for (let row = size - 1; row >= 0; row--) {
    const at = row * size + row;
    const rest = unknowns[first + row]! - product(factor, at + 1, unknowns, first + row + 1, size - row - 1);
    unknowns[first + row] = rest / factor[at]!;
  }
}

function product(factor: Float64Array, a: number, unknowns: Float64Array, b: number, length: number): number {
  let sum = 0;
  for (let k = 0; k < length; k++) sum += factor[a + k]! * unknowns[b + k]!;
  return sum;
}

function rowByRow(unknowns: Float64Array, size: number, columns: number): Float64Array {
  if (columns === 1) return unknowns;
  const rows = new Float64Array(size * columns);
  for (let at = 0; at < rows.length; at++) rows[at] = unknowns[(at % columns) * size + Math.floor(at / columns)]!;
  return rows;
}

function measure(
  { size, matrix }: FactoredMatrix,
  unknowns: Float64Array,
  rightHandSides: Float64Array,
  columns: number,
): { residual: number; worstRow: number } {
  let worst = 0;
  let worstRow = 0;
  let largest = 0;
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < columns; column++) {
      let rest = rightHandSides[row * columns + column]!;
      let terms = Math.abs(rest);
      for (let at = 0; at < size; at++) {
        const term = matrix[row * size + at]! * unknowns[column * size + at]!;
        rest -= term;
        terms += Math.abs(term);
      }
      largest = Math.max(largest, terms);
      if (Math.abs(rest) > worst) {
        worst = Math.abs(rest);
        worstRow = row;
      }
    }
  }
  return { residual: largest === 0 ? 0 : worst / largest, worstRow };
}
