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
  /** Both triangles (LU) or the lower one (Cholesky). */
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
  const factor = new Float64Array(size * size);
  let smallestPivot = Number.POSITIVE_INFINITY;
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < row; column++) {
      const rest = matrix[row * size + column]! - rowProduct(factor, size, row, column, column);
      factor[row * size + column] = rest / factor[column * size + column]!;
    }
    const diagonal = matrix[row * size + row]!;
    const rest = diagonal - rowProduct(factor, size, row, row, row);
    const pivot = diagonal > 0 ? rest / diagonal : diagonal;
    if (!(pivot > size * Number.EPSILON)) return { ok: false, failingRow: row, smallestPivot: pivot };
    smallestPivot = Math.min(smallestPivot, pivot);
    factor[row * size + row] = Math.sqrt(rest);
  }
  const rowOrder = Int32Array.from({ length: size }, (_, row) => row);
  return { ok: true, kind: 'cholesky', size, matrix, factor, rowOrder, smallestPivot };
}

/** Solves for `columns` right hand sides at once (`size` rows of `columns` numbers) and measures the result. */
export function solveFactored(factored: FactoredMatrix, rightHandSides: Float64Array, columns = 1): DenseSolution {
  const { size, rowOrder } = factored;
  if (rightHandSides.length !== size * columns) throw new RangeError(`expected ${size} rows of ${columns} numbers`);
  const solution = new Float64Array(size * columns);
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < columns; column++) {
      solution[row * columns + column] = rightHandSides[rowOrder[row]! * columns + column]!;
    }
  }
  solveLower(factored, solution, columns);
  solveUpper(factored, solution, columns);
  return { solution, ...measure(factored, solution, rightHandSides, columns) };
}

function checkSquare(matrix: Float64Array, size: number): void {
  if (matrix.length !== size * size) throw new RangeError(`expected ${size} rows of ${size} numbers`);
  const bad = matrix.findIndex((entry) => !Number.isFinite(entry));
  if (bad >= 0) throw new RangeError(`row ${Math.floor(bad / size)}, column ${bad % size} is not a finite number`);
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

function rowProduct(factor: Float64Array, size: number, a: number, b: number, length: number): number {
  let sum = 0;
  for (let at = 0; at < length; at++) sum += factor[a * size + at]! * factor[b * size + at]!;
  return sum;
}

function solveLower({ kind, size, factor }: FactoredMatrix, solution: Float64Array, columns: number): void {
  for (let row = 0; row < size; row++) {
    for (let before = 0; before < row; before++) {
      subtractRow(solution, columns, row, before, factor[row * size + before]!);
    }
    if (kind === 'cholesky') divideRow(solution, columns, row, factor[row * size + row]!);
  }
}

function solveUpper({ kind, size, factor }: FactoredMatrix, solution: Float64Array, columns: number): void {
  for (let row = size - 1; row >= 0; row--) {
    for (let after = row + 1; after < size; after++) {
      const entry = kind === 'lu' ? factor[row * size + after]! : factor[after * size + row]!;
      subtractRow(solution, columns, row, after, entry);
    }
    divideRow(solution, columns, row, factor[row * size + row]!);
  }
}

function subtractRow(solution: Float64Array, columns: number, from: number, row: number, share: number): void {
  if (share === 0) return;
  for (let column = 0; column < columns; column++) {
    const at = from * columns + column;
    solution[at] = solution[at]! - share * solution[row * columns + column]!;
  }
}

function divideRow(solution: Float64Array, columns: number, row: number, by: number): void {
  for (let at = row * columns; at < (row + 1) * columns; at++) solution[at] = solution[at]! / by;
}

function measure(
  { size, matrix }: FactoredMatrix,
  solution: Float64Array,
  rightHandSides: Float64Array,
  columns: number,
): { residual: number; worstRow: number } {
  let [worst, worstRow, largest] = [0, 0, 0];
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < columns; column++) {
      let rest = rightHandSides[row * columns + column]!;
      let terms = Math.abs(rest);
      for (let at = 0; at < size; at++) {
        const term = matrix[row * size + at]! * solution[at * columns + column]!;
        rest -= term;
        terms += Math.abs(term);
      }
      largest = Math.max(largest, terms);
      if (Math.abs(rest) > worst) [worst, worstRow] = [Math.abs(rest), row];
    }
  }
  return { residual: largest === 0 ? 0 : worst / largest, worstRow };
}
