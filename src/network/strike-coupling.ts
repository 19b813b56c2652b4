import { inductancesWith } from '../surge/inductance-matrix.ts';
import { mutualInductance } from '../surge/mutual-inductance.ts';
import { type Peak, peakOf } from '../surge/peak-of.ts';
import { currentFigure, overTime } from '../surge/surge-figure.ts';
import { metalWay } from './metal-way.ts';
import type { StrikeRun } from './strike-of.ts';
import type { StrikePair } from './strike-pairs.ts';

/** Radius of the line that lies between the two, metres. */
const cableM = 5e-3;
/** Nearer than this the two make no loop. */
const leastApartM = 0.1;

/**
 * Volts that the currents of all other metal, and of the lightning itself, induce around the loop of a line that lies straight
 * between two parts and the shortest metal between them. What that metal, or the line's own shield, makes by its own current is
 * not in it. null: a place is not known, or nothing but the line joins the two.
 */
export function strikeCoupling(
  { a, b, by }: Pick<StrikePair, 'a' | 'b' | 'by'>,
  { network, run, places }: StrikeRun,
): Peak | null {
  const [first, second] = [places.nodeOf(a), places.nodeOf(b)];
  const [from, to] = [places.placeOf(a), places.placeOf(b)];
  if (first === null || second === null || from === null || to === null) return null;
  if (Math.hypot(from[0] - to[0], from[1] - to[1], from[2] - to[2]) < leastApartM) return null;
  const { surge, branches, pieces, branchOfPiece, points } = network;
  const isOfLine = (branch: number) => branches[branch]!.part === by;
  const metal = surge.branches.map(({ from: start, to: end }, i) => {
    return { from: start, to: end, lengthM: isOfLine(i) ? Number.POSITIVE_INFINITY : branches[i]!.lengthM };
  });
  const way = metalWay(surge.nodeCount, metal, first, second);
  if (way === null) return null;
  const count = branches.length;
  const weights = new Float64Array(count + points.length);
  way.branches.forEach((own, i) => {
    for (let other = 0; other < count; other++)
      weights[other] = weights[other]! + way.signs[i]! * (surge.mutualH?.[own * count + other] ?? 0);
  });
  const line = { from, to, radiusM: cableM };
  inductancesWith(line, pieces).forEach((henry, i) => {
    weights[branchOfPiece[i]!] = weights[branchOfPiece[i]!]! - henry;
  });
  for (const own of way.branches) weights[own] = 0;
  for (let branch = 0; branch < count; branch++) if (isOfLine(branch)) weights[branch] = 0;
  const { channelH } = run.source;
  const alongWay = way.branches.reduce((sum, own, i) => sum + way.signs[i]! * (channelH?.[own] ?? 0), 0);
  const strokeSlope = alongWay - (places.channel === null ? 0 : mutualInductance(line, places.channel));
  const induced = { ...currentFigure(run, weights, true), strokeSlope };
  return peakOf(run.wave.timesS, overTime(run, induced));
}
