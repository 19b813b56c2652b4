import type { RangedEarth } from '../currents/bounds.ts';
import type { SolvedBodies } from '../electrodes/solve-bodies.ts';
import type { Interval } from '../units/interval.ts';
import { lazily } from '../units/lazily.ts';
import type { AloneOhm } from './alone-ohm.ts';
import { type Certain, isThere, type Side } from './certain.ts';
import type { Ground } from './ground.ts';

/** Something that leaks current into the soil, at a node of a group's network. */
export interface EarthPoint {
  /** Of the electrode, or of a piece of a buried conductor. */
  readonly id: string;
  /** The electrode or conductor. */
  readonly part: string;
  readonly node: number;
  /** Points of equal number hang together by bonds that are known to be there. */
  readonly bonded: number;
  readonly alone: Pick<AloneOhm, 'ohm' | 'how'>;
  /** Where it is not certain that it leaks: in for the low answer (and the likely one), out for the high one. */
  readonly certain: Certain;
  readonly line?: PointOfLine;
}

/** One piece of a line. */
export interface PointOfLine {
  /** Which line. */
  readonly id: string;
  /** See `LeakingLine.share`. */
  readonly share: Interval;
  /**
   * A sixth of the piece's metal: where a current leaves evenly along a piece of resistance r, the mean potential of the piece
   * is r / 6 times that current above that of a node at its middle, by integrating the drop along it.
   */
  readonly evenOhm: Readonly<Record<Side, number>>;
}

export interface EarthRanges {
  readonly earth: RangedEarth;
  /** Pairs of electrodes whose coupling through the soil had to be left out. */
  readonly leftOut: readonly (readonly [string, string])[];
  /** Of each point, whether the others feel it through the soil. */
  readonly isFelt: readonly boolean[];
}

/**
 * Resistances to remote earth of a group's electrodes and buried conductors with what they feel of each other through the
 * soil, at the low, the likely and the high figures. A pair without known places is left out and named. A figure of its own
 * that an electrode was stated to have replaces the solved one; what the others feel of it stays.
 */
export function earthRanges(points: readonly EarthPoint[], ground: Ground): EarthRanges {
  const isKnown = points.every((p) => p.certain === 'perhaps' || p.alone.ohm?.value != null);
  const isFelt = points.map((p) => feltThroughSoil(p, points, ground));
  const matrixAt = (side: Side) => matrix({ points, isFelt }, ground, side);
  return {
    earth: lazily<RangedEarth>({
      nodes: () => points.map((p) => p.node),
      lowOhm: () => matrixAt('low'),
      highOhm: () => matrixAt('high'),
      nominalOhm: () => (isKnown ? matrixAt('likely') : null),
    }),
    leftOut: pairsLeftOut({ points, isFelt }, ground),
    isFelt,
  };
}

/**
 * Solved together with the others, and of no less by itself than the soil brings over from any of them: one that was stated
 * to have less does not stand in the soil that was taken.
 */
function feltThroughSoil(p: EarthPoint, points: readonly EarthPoint[], { together, indexOf }: Ground): boolean {
  const index = indexOf.get(p.id);
  if (index === undefined || together.likely === null) return false;
  if (p.alone.how !== 'stated') return true;
  const solved = together.high ?? together.likely;
  return points.every((other) => {
    const column = other === p ? undefined : indexOf.get(other.id);
    const mutualOhm = column === undefined ? 0 : solved.resistanceOhm[index * solved.aloneOhm.length + column]!;
    return mutualOhm <= p.alone.ohm!.low;
  });
}

interface Asked {
  readonly points: readonly EarthPoint[];
  readonly isFelt: readonly boolean[];
}

function matrix({ points, isFelt }: Asked, ground: Ground, side: Side): RangedEarth['lowOhm'] {
  const solved = ground.together[side];
  // thousands of pieces that were not solved together feel nothing
  if (solved === null) return points.map((p) => ownOhm(p, null, undefined, side));
  const indexes = points.map((p) => ground.indexOf.get(p.id));
  const size = solved.aloneOhm.length;
  return points.map((p, i) =>
    points.map((_, j) => {
      if (i === j) return ownOhm(p, solved, indexes[i], side);
      const [a, b] = [indexes[i], indexes[j]];
      const isCoupled = a !== undefined && b !== undefined && isFelt[i] === true && isFelt[j] === true;
      return isCoupled ? solved.resistanceOhm[a * size + b]! * sameLineShare(p, points[j]!, side) : 0;
    }),
  );
}

/** What ranges of its figures do to a line they do to all of it. */
function sameLineShare({ line }: EarthPoint, other: EarthPoint, side: Side): number {
  return side === 'likely' || line === undefined || line.id !== other.line?.id ? 1 : line.share[side];
}

/** Its own figure alone, as far as the presence of other metal does not change it. */
function ownOhm(p: EarthPoint, solved: SolvedBodies | null, index: number | undefined, side: Side): number {
  if (!isThere(p.certain, side)) return Number.POSITIVE_INFINITY;
  const { ohm, how } = p.alone;
  const own = ohm === null ? null : side === 'likely' ? ohm.value : ohm[side];
  if (own === null) return side === 'low' ? 0 : Number.POSITIVE_INFINITY;
  if (how === 'stated' || solved === null || index === undefined) return own;
  const amongAll = (own * solved.resistanceOhm[index * (solved.aloneOhm.length + 1)]!) / solved.aloneOhm[index]!;
  // metal poorer than the soil round it is no matter of a node at its middle any more
  return p.line === undefined ? amongAll : Math.max(amongAll - p.line.evenOhm[side], amongAll / 2);
}

function pairsLeftOut({ points, isFelt }: Asked, { indexOf }: Ground): EarthRanges['leftOut'] {
  // with every figure stated and no places a file is a plain network of resistors
  const isPlain = (a: EarthPoint, b: EarthPoint): boolean =>
    [a, b].every((p) => p.alone.how === 'stated' && !indexOf.has(p.id));
  const felt = new Set(points.filter((_, i) => isFelt[i]));
  const counted = likePoints(
    points.filter((p) => p.certain === 'there' && p.alone.how !== 'unknown'),
    (p) => JSON.stringify([nameOf(p), p.bonded, felt.has(p), isPlain(p, p)]),
  );
  const pairs = counted.flatMap((a, i) =>
    counted
      .slice(i + 1)
      .filter((b) => a.bonded === b.bonded && (!felt.has(a) || !felt.has(b)) && !isPlain(a, b))
      .map((b) => [nameOf(a), nameOf(b)] as const),
  );
  return eachOnce(pairs);
}

/** The first of each sort: a wire has many pieces, and pairs of them are many more. */
function likePoints(points: readonly EarthPoint[], sortOf: (p: EarthPoint) => string): readonly EarthPoint[] {
  const first = new Map<string, EarthPoint>();
  for (const p of points) {
    const sort = sortOf(p);
    if (!first.has(sort)) first.set(sort, p);
  }
  return [...first.values()];
}

/** A piece goes by the name of the whole. */
function nameOf({ id, part, line }: EarthPoint): string {
  return line === undefined ? id : part;
}

function eachOnce(pairs: EarthRanges['leftOut']): EarthRanges['leftOut'] {
  return [...new Map(pairs.filter(([a, b]) => a !== b).map((pair) => [pair.join(' '), pair])).values()];
}

/** The same electrodes as if the soil joined none of them; every pair is named as left out. */
export function withoutCoupling({ earth, leftOut }: EarthRanges, points: readonly EarthPoint[]): EarthRanges {
  const own = (matrix: RangedEarth['lowOhm']) => matrix.map((row, i) => (typeof row === 'number' ? row : row[i]!));
  const each = likePoints(points, nameOf);
  const pairs = eachOnce(each.flatMap((a, i) => each.slice(i + 1).map((b) => [nameOf(a), nameOf(b)] as const)));
  return {
    earth: {
      nodes: earth.nodes,
      lowOhm: own(earth.lowOhm),
      highOhm: own(earth.highOhm),
      nominalOhm: earth.nominalOhm === null ? null : own(earth.nominalOhm),
    },
    leftOut: pairs.length > 0 ? pairs : leftOut,
    isFelt: points.map(() => false),
  };
}
