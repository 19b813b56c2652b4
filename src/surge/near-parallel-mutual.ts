import { gaussLegendre } from '../math/quadrature.ts';

/** A piece as seen from another one that it is nearly parallel to, metres. */
export interface NearParallelPair {
  /** Middle of the first piece: along the second from its middle, and the square of its distance from the second's line. */
  readonly alongM: number;
  readonly offSquaredM2: number;
  /** Change of that square, by half, for each metre along the first piece, at its middle; the sine squared is the rest. */
  readonly offSlopeM: number;
  readonly cosine: number;
  readonly sineSquared: number;
  readonly halfAM: number;
  readonly halfBM: number;
}

/**
 * Double integral of 1 / distance along two pieces that are nearly parallel, metres: along the second in closed form, along
 * the first by Gauss points in halves that are halved again until the sum stands still to 1e-11 of the whole. For the angles
 * at which the closed form of skew lines loses its digits.
 */
export function nearParallelMutual(pair: NearParallelPair): number {
  const whole = stretch(pair, -pair.halfAM, pair.halfAM);
  return halved(pair, -pair.halfAM, pair.halfAM, whole, 1e-11 * Math.abs(whole), 0);
}

const rule = gaussLegendre(8);
const deepest = 40;

function halved(
  pair: NearParallelPair,
  from: number,
  to: number,
  before: number,
  tolerance: number,
  depth: number,
): number {
  const middle = (from + to) / 2;
  const left = stretch(pair, from, middle);
  const right = stretch(pair, middle, to);
  // two levels at least: a whole without its kink looks smooth by chance
  if (depth > 1 && (depth === deepest || Math.abs(left + right - before) <= tolerance)) return left + right;
  return halved(pair, from, middle, left, tolerance, depth + 1) + halved(pair, middle, to, right, tolerance, depth + 1);
}

function stretch(pair: NearParallelPair, from: number, to: number): number {
  const half = (to - from) / 2;
  let sum = 0;
  for (let i = 0; i < rule.points.length; i++)
    sum += rule.weights[i]! * seen(pair, from + half * (1 + rule.points[i]!));
  return half * sum;
}

/** What the point at s of the first piece sees of the second: the integral of 1 / distance. */
function seen(pair: NearParallelPair, s: number): number {
  const foot = pair.alongM + s * pair.cosine;
  const square = pair.offSquaredM2 + s * (2 * pair.offSlopeM + s * pair.sineSquared);
  // rounding may take the square of a point on the line itself below 0
  const offM = Math.sqrt(Math.max(square, Number.MIN_VALUE));
  return Math.asinh((pair.halfBM - foot) / offM) + Math.asinh((pair.halfBM + foot) / offM);
}
