/**
 * Solutions x of A x = b in the sense of least squares, for several right hand sides with one A, held by a ridge: the least of
 * |A x - b|^2 + |ridge x|^2. A is given column by column, at least as many rows as columns (or a ridge above 0). A column that
 * says nothing beyond those before it, to rounding, gets 0.
 *
 * Householder reflections: G. H. Golub, C. F. Van Loan, Matrix Computations, algorithm 5.3.2 (from memory).
 */
export function leastSquares(
  columns: readonly Float64Array[],
  rightHandSides: readonly Float64Array[],
  ridge = 0,
): readonly Float64Array[] {
  const extended = columns.map((column, at) => withRidge(column, columns.length, ridge, at));
  const sides = rightHandSides.map((side) => withRidge(side, columns.length, ridge, null));
  const diagonal = extended.map((column, at) => {
    const pivot = reflectColumn(column, at);
    for (const later of extended.slice(at + 1)) reflect(column, at, later);
    for (const side of sides) reflect(column, at, side);
    return pivot;
  });
  return sides.map((side) => solveUpper(extended, diagonal, side));
}

function withRidge(column: Float64Array, columns: number, ridge: number, at: number | null): Float64Array {
  if (ridge === 0) return column.slice();
  const longer = new Float64Array(column.length + columns);
  longer.set(column);
  if (at !== null) longer[column.length + at] = ridge;
  return longer;
}

/** Turns a column from its diagonal down into the reflection that clears it, of length sqrt 2; gives the diagonal. */
function reflectColumn(column: Float64Array, from: number): number {
  let squares = 0;
  for (let row = from; row < column.length; row++) squares += column[row]! ** 2;
  const diagonal = column[from]! > 0 ? -Math.sqrt(squares) : Math.sqrt(squares);
  if (squares === 0) return 0;
  column[from] = column[from]! - diagonal;
  const length = Math.sqrt(-diagonal * column[from]!);
  for (let row = from; row < column.length; row++) column[row] = column[row]! / length;
  return diagonal;
}

function reflect(reflection: Float64Array, from: number, to: Float64Array): void {
  let along = 0;
  for (let row = from; row < to.length; row++) along += reflection[row]! * to[row]!;
  for (let row = from; row < to.length; row++) to[row] = to[row]! - along * reflection[row]!;
}

function solveUpper(columns: readonly Float64Array[], diagonal: readonly number[], side: Float64Array): Float64Array {
  const solution = new Float64Array(columns.length);
  const least = Number.EPSILON * Math.max(...diagonal.map(Math.abs));
  for (let at = columns.length - 1; at >= 0; at--) {
    let rest = side[at]!;
    for (let later = columns.length - 1; later > at; later--) rest -= columns[later]![at]! * solution[later]!;
    solution[at] = Math.abs(diagonal[at]!) > least ? rest / diagonal[at]! : 0;
  }
  return solution;
}
