import { type Interval, middle } from '../math/interval.ts';
import type { SoilImages } from '../soil/layer-images.ts';
import { lazily } from '../units/lazily.ts';
import type { Run } from './body.ts';
import { bodyOf } from './body-of.ts';
import type { BodyTrouble } from './body-troubles.ts';
import type { ClosedForm, Figures } from './closed-form.ts';
import { closedFormOf } from './closed-form-of.ts';
import type { ElectrodeShape } from './electrode.ts';
import { type ElectrodeResistance, likelyFigures, type WorkedOutOhm } from './electrode-resistance.ts';
import type { Placement } from './placement.ts';
import { type ScaledSoil, scaledSolver } from './scaled-soil.ts';
import { mostSegments, type UnsolvedBodies } from './solve-bodies.ts';
import { starAlone } from './star-alone.ts';

/** The plain soils that enclose a soil, and the likely one; null: see `ProfileBounds`. */
export interface EnclosingSoils {
  readonly low: ScaledSoil | null;
  readonly likely: ScaledSoil | null;
  readonly high: ScaledSoil | null;
}

/** Why an electrode has no figure though all that has to be known is: its metal, the solve, or a soil that is out of reach. */
export type WhyUnsolved = BodyTrouble['key'] | UnsolvedBodies['reason'] | 'soil out of reach';

export interface SolvedResistance extends ElectrodeResistance {
  /** null: it was solved, or something is missing or out of range. */
  readonly unsolved: WhyUnsolved | null;
}

/**
 * Resistance of one electrode alone to remote earth (ohm), solved by boundary elements: `value` at the middle of every range
 * in the likely soil, `low` with the most metal in the soil of least resistivity, `high` with the least metal in that of the
 * most. Figures of which more may raise or lower it (depths, the hole of a drilled rod) are tried at both ends. `missing` as
 * for the closed form of its kind, which tells what has to be known. `way`: the points that a wire passes, where they are known.
 * Each figure is solved when it is first read.
 */
export function solvedResistance(
  shape: ElectrodeShape,
  soils: EnclosingSoils | null,
  way: Way | null = null,
): SolvedResistance {
  const form = closedFormOf(shape);
  const answer: SolvedResistance = {
    ohm: null,
    missing: missingOf(form, soils),
    outOfRange: [],
    formula:
      'boundary elements: even leakage along each segment, mean potential of each equal (Galerkin), layers by images',
    source: {
      document: 'R. F. Harrington, Field Computation by Moment Methods; E. D. Sunde, Earth Conduction Effects',
      edition: '1968; 1949',
      clause: null,
      provenance: 'memory',
    },
    errorShare: null,
    unsolved: null,
  };
  if (answer.missing.length > 0 || soils === null) return answer;
  const ranges = form.figures as Readonly<Record<string, Interval>>;
  const likely = likelyFigures(ranges);
  const outOfRange = form.outOfRange(likely);
  if (outOfRange.length > 0) return { ...answer, outOfRange };
  const asked = { shape, way };
  if (isTooMany(shape)) return { ...answer, ohm: anyOhm, unsolved: 'too many segments' };
  if (form.perOhmM(likely) === null) return { ...answer, outOfRange: ['spacingM'] };
  const isOpen = Object.values(ranges).some((range) => middle(range) === null);
  // of metal that is all known the soils alone make the bounds, and they enclose the likely one
  const isKnown = Object.values(ranges).every(({ low, high }) => low === high);
  const between = () => (isKnown && soils.low !== null && soils.high !== null ? null : ohm.value);
  const ohm: WorkedOutOhm = lazily<WorkedOutOhm>({
    value: () => (isOpen || soils.likely === null ? null : ohmOf(asked, likely, soils.likely)),
    low: () => Math.min(bound(asked, ranges, 'low', soils.low), between() ?? Number.POSITIVE_INFINITY),
    high: () => Math.max(bound(asked, ranges, 'high', soils.high), between() ?? 0),
  });
  const { missing, formula, source, errorShare } = answer;
  return lazily<SolvedResistance>({
    ohm: () => ohm,
    missing: () => missing,
    outOfRange: () => outOfRange,
    formula: () => formula,
    source: () => source,
    errorShare: () => errorShare,
    unsolved: () => (isAny(ohm) ? whyUnsolved(asked, likely, soils) : null),
  });
}

/** Nothing is known of it. */
const anyOhm: WorkedOutOhm = { value: null, low: 0, high: Number.POSITIVE_INFINITY };

function isAny({ value, low, high }: WorkedOutOhm): boolean {
  return value === null && low === 0 && high === Number.POSITIVE_INFINITY;
}

/** More rods or wires than pieces of one solve are told before a closed form is asked about all their pairs. */
function isTooMany(shape: ElectrodeShape): boolean {
  return 'count' in shape && (shape.count ?? 0) > mostSegments;
}

function missingOf(form: ClosedForm, soils: EnclosingSoils | null): readonly string[] {
  return [
    ...Object.keys(form.figures).filter((name) => form.figures[name] === null),
    ...form.alsoMissing,
    ...(soils === null ? ['soil.layers'] : []),
  ];
}

/** Points that a buried wire passes, and whether it closes on itself. */
export type Way = Pick<Placement, 'route' | 'closed'>;

/** Of these more lowers a resistance; of a filling's resistivity more raises it; of all others it may go either way. */
const lowering: ReadonlySet<string> = new Set([
  'lengthM',
  'armLengthM',
  'diameterM',
  'radiusM',
  'joiningRadiusM',
  'widthM',
  'heightM',
  'spacingM',
  'coreDiameterM',
]);
const raising: ReadonlySet<string> = new Set(['concreteOhmM', 'backfillOhmM']);

/** Least or greatest of the corners that can be the least or the greatest; no bound where a figure is open to that side. */
function bound(
  asked: Asked,
  ranges: Readonly<Record<string, Interval>>,
  side: 'low' | 'high',
  soil: ScaledSoil | null,
): number {
  const unbounded = side === 'low' ? 0 : Number.POSITIVE_INFINITY;
  if (soil === null) return unbounded;
  let corners: Figures[] = [{}];
  for (const [name, range] of Object.entries(ranges)) {
    const ends = endsOf(asked.shape, name, range, side);
    if (ends.some((end) => end === Number.POSITIVE_INFINITY)) return unbounded;
    corners = corners.flatMap((corner) => ends.map((end) => ({ ...corner, [name]: end })));
  }
  const all = corners.map((figures) => ohmOf(asked, figures, soil) ?? unbounded);
  return side === 'low' ? Math.min(...all) : Math.max(...all);
}

function endsOf(
  { kind }: ElectrodeShape,
  name: string,
  { low, high }: Interval,
  side: 'low' | 'high',
): readonly number[] {
  if (low === high) return [low];
  // more concrete is more metal only where it conducts better than the soil
  if (lowering.has(name) && !(kind === 'encased' && (name === 'widthM' || name === 'heightM')))
    return [side === 'low' ? high : low];
  if (raising.has(name)) return [side === 'low' ? low : high];
  return [low, high];
}

interface Asked {
  readonly shape: ElectrodeShape;
  readonly way: Way | null;
}

type Solver = (soil: ScaledSoil) => Alone;
type Alone = { readonly ok: true; readonly ohm: number } | { readonly ok: false; readonly why: WhyUnsolved };

/** Rods of one size are many on a site: each body is solved once in soils of one shape. */
const solvedIn = new WeakMap<SoilImages, Map<string, Solver>>();

/** null where these figures make no body, or one that cannot be solved. */
function ohmOf(asked: Asked, figures: Figures, soil: ScaledSoil): number | null {
  const alone = aloneIn(asked, figures, soil);
  return alone.ok ? alone.ohm : null;
}

function aloneIn(asked: Asked, figures: Figures, soil: ScaledSoil): Alone {
  const solvers = solvedIn.get(soil.images) ?? new Map<string, Solver>();
  solvedIn.set(soil.images, solvers);
  const key = JSON.stringify([asked, figures]);
  const solver = solvers.get(key) ?? solverOf(asked, figures);
  solvers.set(key, solver);
  return solver(soil);
}

/** null: only figures that are open to either side leave it open. */
function whyUnsolved(asked: Asked, figures: Figures, { likely, high, low }: EnclosingSoils): WhyUnsolved | null {
  const soil = likely ?? high ?? low;
  if (soil === null) return 'soil out of reach';
  const alone = aloneIn(asked, figures, soil);
  return alone.ok ? null : alone.why;
}

/** The estimate is three times what halving the pieces costs: rods are within 0.25 % without being cut again. */
export const aloneErrorShare = 0.01;

function solverOf({ shape, way }: Asked, figures: Figures): Solver {
  const made = bodyOf(shape, figures, { at: [0, 0], ...way });
  if (!made.ok) return () => ({ ok: false, why: made.key });
  if (shape.kind === 'star') return starSolver(made.body.runs);
  const solve = scaledSolver([made.body], { errorShare: aloneErrorShare });
  return (soil) => {
    const solved = solve(soil);
    return solved.ok ? { ok: true, ohm: solved.aloneOhm[0]! } : { ok: false, why: solved.reason };
  };
}

/** A solver is asked about soils of one shape alone. */
function starSolver(arms: readonly Run[]): Solver {
  let unitOhm: number | null | undefined;
  return ({ factor, images }) => {
    if (unitOhm === undefined) unitOhm = starAlone(arms, images, aloneErrorShare);
    return unitOhm === null ? { ok: false, why: 'not positive definite' } : { ok: true, ohm: factor * unitOhm };
  };
}
