import type { Position } from '../site/site.ts';
import { inductancesWith } from '../surge/inductance-matrix.ts';
import { mutualInductance } from '../surge/mutual-inductance.ts';
import { actionIntegral, type Peak, peakOf } from '../surge/peak-of.ts';
import type { StraightPiece } from '../surge/straight-piece.ts';
import type { SurgeCourse } from '../surge/surge-course.ts';
import { currentFigure, figureDifference, overTime, potentialFigure, type SurgeFigure } from '../surge/surge-figure.ts';
import type { StrikeNetwork } from './strike-network.ts';
import { remoteEarth, type StrikePair } from './strike-pairs.ts';

export interface StrikeBetween {
  readonly pair: StrikePair;
  readonly peak: Peak;
  /** null: places are not known, and the figure is that of the nodes. */
  readonly route: 'straight' | null;
}

/** Where parts are, for the routes between them; and the strike's own channel. */
export interface StrikePlaces {
  /** Node of the surge network; null: the part is not there, or hangs on nothing that reaches the soil. */
  readonly nodeOf: (part: string) => number | null;
  readonly placeOf: (part: string) => Position | null;
  readonly channel: StraightPiece | null;
}

/**
 * Volts along the straight line between two parts: the difference of their nodes less what the currents of all metal with a
 * place, and of the channel, induce along that line. null: one of them hangs on nothing.
 */
export function strikeBetween(
  pair: StrikePair,
  network: StrikeNetwork,
  run: SurgeCourse,
  { nodeOf, placeOf, channel }: StrikePlaces,
): StrikeBetween | null {
  const { a, b } = pair;
  const first = nodeOf(a);
  if (first === null) return null;
  const volts = potentialFigure(run, first);
  if (b === remoteEarth) return { pair, peak: peakIn(run, volts), route: null };
  const second = nodeOf(b);
  if (second === null) return null;
  const apart = figureDifference(volts, potentialFigure(run, second));
  const [from, to] = [placeOf(a), placeOf(b)];
  if (from === null || to === null) return { pair, peak: peakIn(run, apart), route: null };
  if (apartM(from, to) < leastRouteM) return { pair, peak: peakIn(run, apart), route: 'straight' };
  const induced = inducedAlong({ from, to, radiusM: cableM }, network, run, channel);
  return { pair, peak: peakIn(run, figureDifference(apart, induced)), route: 'straight' };
}

/** Nearer than this nothing is induced that counts. */
const leastRouteM = 0.1;
/** Radius of the cable that would lie there, metres. */
const cableM = 5e-3;

function inducedAlong(
  route: StraightPiece,
  network: StrikeNetwork,
  run: SurgeCourse,
  channel: StraightPiece | null,
): SurgeFigure {
  const { pieces, branchOfPiece, branches, points } = network;
  const weights = new Float64Array(branches.length + points.length);
  inductancesWith(route, pieces).forEach((henry, i) => {
    const branch = branchOfPiece[i]!;
    weights[branch] = weights[branch]! + henry;
  });
  const figure = currentFigure(run, weights, true);
  return channel === null ? figure : { ...figure, strokeSlope: mutualInductance(route, channel) };
}

function peakIn(run: SurgeCourse, figure: SurgeFigure): Peak {
  return peakOf(run.wave.timesS, overTime(run, figure));
}

function apartM(a: Position, b: Position): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** What one part (of one or several branches) carries: the largest peak of them, and its action integral. */
export interface StrikeCarried {
  readonly part: string;
  readonly peak: Peak;
  readonly actionA2s: number;
  /** Of the branch of the peak. */
  readonly resistanceOhm: number;
}

/** Of every part with a branch, by id. */
export function strikeCarried({ branches, points }: StrikeNetwork, run: SurgeCourse): readonly StrikeCarried[] {
  const largest = new Map<string, StrikeCarried>();
  const weights = new Float64Array(branches.length + points.length);
  branches.forEach(({ part, resistanceOhm }, branch) => {
    weights.fill(0);
    weights[branch] = 1;
    const current = overTime(run, currentFigure(run, weights));
    const peak = peakOf(run.wave.timesS, current);
    const held = largest.get(part);
    if (held !== undefined && Math.abs(held.peak.value) >= Math.abs(peak.value)) return;
    largest.set(part, { part, peak, actionA2s: actionIntegral(run.wave.timesS, current), resistanceOhm });
  });
  return inOrder([...largest.values()]);
}

/** What each electrode, or bare metal in the soil, gives to it in all. */
export function strikeIntoSoil({ branches, points }: StrikeNetwork, run: SurgeCourse) {
  const weightsOf = new Map<string, Float64Array>();
  points.forEach(({ part }, i) => {
    const weights = weightsOf.get(part) ?? new Float64Array(branches.length + points.length);
    weights[branches.length + i] = 1;
    weightsOf.set(part, weights);
  });
  return inOrder([...weightsOf].map(([part, weights]) => ({ part, peak: peakIn(run, currentFigure(run, weights)) })));
}

function inOrder<T extends { readonly part: string }>(list: readonly T[]): readonly T[] {
  return [...list].sort((x, y) => (x.part < y.part ? -1 : 1));
}
