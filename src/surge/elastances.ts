import { packedInverse } from './mutual-inductance.ts';
import { packPieces, type StraightPiece } from './straight-piece.ts';

/** 1 / (4 pi epsilon0) = c^2 mu0 / (4 pi), metre per farad. */
const inverse4PiEpsilon0 = 299_792_458 ** 2 * 1e-7;

/**
 * Partial coefficients of potential, volt per coulomb, row by row: what a charge spread evenly over the metal of one cell (some
 * straight pieces) puts on each in the mean, in free air and against infinity.
 *
 *     P = 1 / (4 pi epsilon0 l m) double integral of 1 / sqrt(R^2 + g^2)
 *
 * with the kernel of `mutualInductance`: along parallel pieces P = c^2 M / (l m), so that a wave runs there at the speed of light.
 * A. E. Ruehli, Equivalent circuit models for three-dimensional multiconductor systems, IEEE Trans. MTT 22 (1974), from memory.
 */
export function elastances(cells: readonly (readonly StraightPiece[])[]): Float64Array {
  const owner = cells.flatMap((pieces, cell) => pieces.map(() => cell));
  const packed = packPieces(cells.flat());
  const lengthM = new Float64Array(cells.length);
  owner.forEach((cell, i) => {
    lengthM[cell] = lengthM[cell]! + 2 * packed.halfM[i]!;
  });
  const count = cells.length;
  const matrix = new Float64Array(count * count);
  for (let i = 0; i < owner.length; i++) {
    for (let j = i; j < owner.length; j++) {
      const [a, b] = [owner[i]!, owner[j]!];
      const share = (inverse4PiEpsilon0 * packedInverse(packed, i, j)) / (lengthM[a]! * lengthM[b]!);
      matrix[a * count + b] = matrix[a * count + b]! + share;
      if (i !== j) matrix[b * count + a] = matrix[b * count + a]! + share;
    }
  }
  return matrix;
}
