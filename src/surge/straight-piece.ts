import { positive } from './positive.ts';

export type Point = readonly [number, number, number];

/**
 * A straight piece of conductor: metres, any three axes at right angles. Its current runs from `from` to `to`. `radiusM` is
 * that of a round wire or tube; of another section its own mean distance (`strapRadius`, `bundleRadius`).
 */
export interface StraightPiece {
  readonly from: Point;
  readonly to: Point;
  readonly radiusM: number;
}

/** Pieces side by side in plain arrays: middles, unit vectors, half lengths, radii; metres. */
export interface PackedPieces {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly ux: Float64Array;
  readonly uy: Float64Array;
  readonly uz: Float64Array;
  readonly halfM: Float64Array;
  readonly radiusM: Float64Array;
}

/** RangeError for a piece without length, without radius, or with a figure that is no number. */
export function packPieces(pieces: readonly StraightPiece[]): PackedPieces {
  const count = pieces.length;
  const column = () => new Float64Array(count);
  const packed = {
    count,
    x: column(),
    y: column(),
    z: column(),
    ux: column(),
    uy: column(),
    uz: column(),
    halfM: column(),
    radiusM: column(),
  };
  pieces.forEach(({ from, to, radiusM }, i) => {
    const [dx, dy, dz] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
    const lengthM = positive(Math.hypot(dx, dy, dz), `length of piece ${i}`);
    packed.x[i] = from[0] + dx / 2;
    packed.y[i] = from[1] + dy / 2;
    packed.z[i] = from[2] + dz / 2;
    packed.ux[i] = dx / lengthM;
    packed.uy[i] = dy / lengthM;
    packed.uz[i] = dz / lengthM;
    packed.halfM[i] = lengthM / 2;
    packed.radiusM[i] = positive(radiusM, `radius of piece ${i}`);
  });
  return packed;
}
