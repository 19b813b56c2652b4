import type { Conductor, Position, Site } from '../site/site.ts';
import { bendForce, parallelForce } from '../surge/conductor-force.ts';
import { levelFigures } from '../surge/stroke-levels.ts';
import { middle } from '../units/interval.ts';
import type { StrikeBranch } from './strike-branches.ts';
import type { StrikeNetwork } from './strike-network.ts';

/** Force of the currents at their peaks on something that could move or let go. */
export interface StrikeForce {
  readonly kind: 'parallel' | 'bend';
  readonly part: string;
  /** The run beside it; null: a bend. */
  readonly beside: string | null;
  /** Pulling together or apart, or straightening; always positive. Of runs side by side, on each metre. */
  readonly forceN: number;
  /** The same with these shares of the greatest stroke of protection level I. */
  readonly atLevelIN: number;
  readonly attracts: boolean;
  readonly peakA: number;
  readonly besideA: number | null;
  /** Along which they lie side by side, and how far apart; of a bend: of its longer arm, null. */
  readonly lengthM: number;
  readonly apartM: number | null;
  /** Nobody typed how far: two cable diameters were taken. */
  readonly apartTaken: boolean;
  /** By how much a bend turns, degrees; null: no bend. */
  readonly turnsDeg: number | null;
}

/** Less than this moves no wire that usual clips hold, newton (on each metre of a run): the weight of some fifty kilograms. Ours. */
export const leastForceN = 500;

/** A piece of a branch with the peak that it carries. */
interface Carrying {
  readonly part: string;
  readonly from: Position;
  readonly to: Position;
  readonly radiusM: number;
  readonly peakA: number;
}

/**
 * Forces of `leastForceN` and more, in this stroke or with the same shares at level I: between runs side by side (nearly parallel, nearer than a metre), and across the corners of
 * bends. At the peak of each current, as if all came at once: the high side. `peakOf`: of a branch by its index, with its sign.
 */
export function strikeForces(
  site: Site,
  { branches, pieces, branchOfPiece, laidApart }: ForceNetwork,
  strokeA: number,
  peakOf: (branch: number) => number,
): readonly StrikeForce[] {
  const peaks = branches.map((_, i) => peakOf(i));
  const carrying = pieces.flatMap(({ from, to, radiusM }, i): Carrying[] => {
    const branch = branchOfPiece[i]!;
    const peakA = peaks[branch]!;
    return Math.abs(peakA) < leastA ? [] : [{ part: branches[branch]!.part, from, to, radiusM, peakA }];
  });
  const corners = branches.flatMap((branch, i) => cornersOf(branch, peaks[i]!));
  const routed = new Set(corners.map((c) => c.part));
  const typed = site.conductors.flatMap((c) =>
    routed.has(c.id) ? [] : typedBends(c, greatestOf(c.id, branches, peaks), branches),
  );
  const wires = new Set(site.conductors.filter((c) => c.along === null).map((c) => c.id));
  const taken = new Set(laidApart);
  // wires that only the drawing lays on top of each other are held by nothing there
  const pairs = pairsOf(carrying).flatMap((pair) => {
    const apartTaken = pair.apartM! < bundleM && [pair.part, pair.beside!].some((part) => taken.has(part));
    return apartTaken && wires.has(pair.part) && wires.has(pair.beside!) ? [] : [{ ...pair, apartTaken }];
  });
  const times = (levelFigures('I')!.firstPositiveA / strokeA) ** 2;
  return largestEach([...pairs, ...corners, ...typed])
    .map((force) => ({ ...force, atLevelIN: force.forceN * times }))
    .filter(({ forceN, atLevelIN }) => Math.max(forceN, atLevelIN) >= leastForceN)
    .sort((a, b) => b.forceN - a.forceN || (keyOf(a) < keyOf(b) ? -1 : 1));
}

type ForceNetwork = Pick<StrikeNetwork, 'branches' | 'pieces' | 'branchOfPiece' | 'laidApart'>;

/** A current of less pushes nothing worth a word. Ours. */
const leastA = 300;
/** Farther apart nobody has bundled two. */
const bundleM = 0.1;
const nearM = 1;
/** Cosine of 10 degrees. */
const alikeCosine = 0.985;

function pairsOf(pieces: readonly Carrying[]): readonly StrikeForce[] {
  const found: StrikeForce[] = [];
  pieces.forEach((a, i) => {
    for (const b of pieces.slice(i + 1)) {
      const pair = a.part === b.part ? null : sideBySide(a, b);
      if (pair !== null) found.push(pair);
    }
  });
  return found;
}

/** null: not parallel, too far apart, no stretch in common, or one within the other. */
function sideBySide(a: Carrying, b: Carrying): StrikeForce | null {
  const [along, other] = [direction(a), direction(b)];
  const cosine = dot(along.unit, other.unit);
  if (along.lengthM < leastLengthM || other.lengthM < leastLengthM || Math.abs(cosine) < alikeCosine) return null;
  const ends = [b.from, b.to].map((end) => less(end, a.from));
  const stations = ends.map((end) => dot(end, along.unit));
  const lengthM = Math.min(along.lengthM, Math.max(...stations)) - Math.max(0, Math.min(...stations));
  const middleOf = ends[0]!.map((x, k) => (x + ends[1]![k]!) / 2) as unknown as Position;
  const at = dot(middleOf, along.unit);
  const apartM = Math.hypot(...middleOf.map((x, k) => x - at * along.unit[k]!));
  if (lengthM < leastLengthM || apartM > nearM || apartM <= a.radiusM + b.radiusM) return null;
  const force = parallelForce(a.peakA, Math.sign(cosine) * b.peakA, lengthM, apartM);
  const [one, two] = Math.abs(a.peakA) <= Math.abs(b.peakA) ? [a, b] : [b, a];
  return {
    kind: 'parallel',
    part: one.part,
    beside: two.part,
    forceN: Math.abs(force) / lengthM,
    atLevelIN: 0,
    attracts: force > 0,
    peakA: Math.abs(one.peakA),
    besideA: Math.abs(two.peakA),
    lengthM,
    apartM,
    apartTaken: false,
    turnsDeg: null,
  };
}

const leastLengthM = 0.1;

/** Corners of a way. Each arm counts, one after the other: the longer one takes the greater push. */
function cornersOf({ part, way, radiusM }: StrikeBranch, peakA: number): readonly StrikeForce[] {
  if (way === null || Math.abs(peakA) < leastA) return [];
  return way.slice(1, -1).flatMap((corner, i) => {
    const [into, out] = [direction({ from: way[i]!, to: corner }), direction({ from: corner, to: way[i + 2]! })];
    const turn = Math.acos(Math.min(1, Math.max(-1, dot(into.unit, out.unit))));
    const lengthM = Math.max(into.lengthM, out.lengthM);
    const force = bendOf(part, peakA, turn, lengthM, radiusM);
    return force === null ? [] : [force];
  });
}

/** Bends as typed, of a wire whose way is not known: each arm is half of it. */
function typedBends(c: Conductor, peakA: number, branches: readonly StrikeBranch[]): readonly StrikeForce[] {
  const own = branches.filter(({ part }) => part === c.id);
  const lengthM = own.reduce((sum, b) => sum + b.lengthM, 0) / 2;
  if (own.length === 0 || lengthM === 0 || Math.abs(peakA) < leastA) return [];
  return c.bends.flatMap(({ angleDeg, radiusM }) => {
    const turnsDeg = angleDeg === null ? null : middle(angleDeg);
    if (turnsDeg === null) return [];
    // a bend of a radius has no corner: the push begins at that radius
    const startM = Math.max(own[0]!.radiusM, radiusM === null ? 0 : (middle(radiusM) ?? 0));
    const force = bendOf(c.id, peakA, (turnsDeg * Math.PI) / 180, lengthM, startM);
    return force === null ? [] : [force];
  });
}

function bendOf(part: string, peakA: number, turnRad: number, lengthM: number, startM: number): StrikeForce | null {
  const includedRad = Math.PI - turnRad;
  // a hairpin is no corner but two runs side by side
  if (!(includedRad > leastIncludedRad) || lengthM <= startM) return null;
  const forceN = bendForce(peakA, Math.min(Math.PI, includedRad), startM, lengthM);
  const turnsDeg = (turnRad * 180) / Math.PI;
  return {
    kind: 'bend',
    part,
    beside: null,
    forceN,
    atLevelIN: 0,
    attracts: false,
    peakA: Math.abs(peakA),
    besideA: null,
    lengthM,
    apartM: null,
    apartTaken: false,
    turnsDeg,
  };
}

/** 10 degrees. */
const leastIncludedRad = 0.17;

function greatestOf(part: string, branches: readonly StrikeBranch[], peaks: readonly number[]): number {
  return branches.reduce(
    (most, b, i) => (b.part === part && Math.abs(peaks[i]!) > Math.abs(most) ? peaks[i]! : most),
    0,
  );
}

/** Of one part's bends, or of two parts side by side, only the strongest. */
function largestEach(all: readonly StrikeForce[]): readonly StrikeForce[] {
  const strongest = new Map<string, StrikeForce>();
  for (const force of all) {
    const key = [force.part, force.beside ?? ''].sort().join(' ');
    const held = strongest.get(key);
    if (held === undefined || held.forceN < force.forceN) strongest.set(key, force);
  }
  return [...strongest.values()];
}

function keyOf({ part, beside }: StrikeForce): string {
  return `${part} ${beside ?? ''}`;
}

function direction({ from, to }: { readonly from: Position; readonly to: Position }) {
  const run = less(to, from);
  const lengthM = Math.hypot(...run);
  const unit: Position = lengthM === 0 ? [0, 0, 0] : [run[0] / lengthM, run[1] / lengthM, run[2] / lengthM];
  return { unit, lengthM };
}

function less(a: Position, b: Position): Position {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function dot(a: Position, b: Position): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
