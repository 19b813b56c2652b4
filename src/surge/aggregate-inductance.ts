/** A run of pieces that one current flows along: numbers of the pieces, and +1 or -1 as the current goes with them or against. */
export interface PieceRun {
  readonly pieces: readonly number[];
  readonly signs: readonly number[];
}

/**
 * Inductances of runs from those of their pieces, henry, row by row: the sum over both runs of sign times sign times partial
 * inductance. A closed loop is a run too: then it is the loop's own inductance and does not depend on where the return is.
 */
export function aggregateInductance(matrix: Float64Array, runs: readonly PieceRun[]): Float64Array {
  const count = Math.round(Math.sqrt(matrix.length));
  const size = runs.length;
  const total = new Float64Array(size * size);
  runs.forEach((a, row) => {
    runs.forEach((b, column) => {
      total[row * size + column] = sumOver(matrix, count, a, b);
    });
  });
  return total;
}

function sumOver(matrix: Float64Array, count: number, a: PieceRun, b: PieceRun): number {
  let sum = 0;
  a.pieces.forEach((i, at) => {
    let row = 0;
    for (let k = 0; k < b.pieces.length; k++) row += b.signs[k]! * matrix[i * count + b.pieces[k]!]!;
    sum += a.signs[at]! * row;
  });
  return sum;
}
