import { packedMutual } from './mutual-inductance.ts';
import { packPieces, type StraightPiece } from './straight-piece.ts';

export type { Point, StraightPiece } from './straight-piece.ts';

/**
 * Partial inductances of all straight pieces, henry: row by row, each piece's own on the diagonal, without what lies inside
 * the metal. Symmetric. Sign as their directions go. See `mutualInductance` for the kernel; `tightestPair` says whether the
 * matrix can be one of real metal.
 */
export function inductanceMatrix(pieces: readonly StraightPiece[]): Float64Array {
  const packed = packPieces(pieces);
  const { count } = packed;
  const matrix = new Float64Array(count * count);
  for (let i = 0; i < count; i++) {
    for (let j = i; j < count; j++) {
      const mutual = packedMutual(packed, i, j);
      matrix[i * count + j] = mutual;
      matrix[j * count + i] = mutual;
    }
  }
  return matrix;
}

/** Mutual partial inductance of one piece, a lightning channel say, with each of the others, henry. */
export function inductancesWith(piece: StraightPiece, others: readonly StraightPiece[]): Float64Array {
  const packed = packPieces([...others, piece]);
  return Float64Array.from(others, (_, i) => packedMutual(packed, i, others.length));
}
