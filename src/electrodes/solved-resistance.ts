import { type Interval, middle } from '../math/interval.ts';
import type { SoilImages } from '../soil/layer-images.ts';
import { bodyOf } from './body-of.ts';
import type { ClosedForm, Figures } from './closed-form.ts';
import { closedFormOf } from './closed-form-of.ts';
import type { ElectrodeShape } from './electrode.ts';
import { type ElectrodeResistance, likelyFigures } from './electrode-resistance.ts';
import type { Placement } from './placement.ts';
import { type ScaledSoil, scaledSolver } from './scaled-soil.ts';

/** The plain soils that enclose a soil, and the likely one; null: see `ProfileBounds`. */
export interface EnclosingSoils {
  readonly low: ScaledSoil | null;
  readonly likely: ScaledSoil | null;
  readonly high: ScaledSoil | null;
}

/**
 * Resistance of one electrode alone to remote earth (ohm), solved by boundary elements: `value` at the middle of every range
 * in the likely soil, `low` with the most metal in the soil of least resistivity, `high` with the least metal in that of the
 * most. Figures of which more may raise or lower it (depths, the hole of a drilled rod) are tried at both ends. `missing` as
 * for the closed form of its kind, which tells what has to be known. `way`: the points that a wire passes, where they are known.
 */
export function solvedResistance(
  shape: ElectrodeShape,
  soils: EnclosingSoils | null,
  way: Way | null = null,
): ElectrodeResistance {
  const form = closedFormOf(shape);
  const answer: ElectrodeResistance = {
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
  };
  if (answer.missing.length > 0 || soils === null) return answer;
  const ranges = form.figures as Readonly<Record<string, Interval>>;
  const likely = likelyFigures(ranges);
  const outOfRange = form.outOfRange(likely);
  if (outOfRange.length > 0) return { ...answer, outOfRange };
  if (form.perOhmM(likely) === null) return { ...answer, outOfRange: ['spacingM'] };
  const isOpen = Object.values(ranges).some((range) => middle(range) === null);
  const value = isOpen || soils.likely === null ? null : ohmOf({ shape, way }, likely, soils.likely);
  const low = bound({ shape, way }, ranges, 'low', soils.low);
  const high = bound({ shape, way }, ranges, 'high', soils.high);
  const ohm = { value, low: Math.min(low, value ?? low), high: Math.max(high, value ?? high) };
  return { ...answer, missing: soils.likely === null ? ['soil.layers.thickness'] : [], ohm };
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

/** Rods of one size are many on a site: each body is solved once in soils of one shape. */
const solvedIn = new WeakMap<SoilImages, Map<string, ReturnType<typeof scaledSolver> | null>>();

/** null where these figures make no body. */
function ohmOf(asked: Asked, figures: Figures, soil: ScaledSoil): number | null {
  const solvers = solvedIn.get(soil.images) ?? new Map<string, ReturnType<typeof scaledSolver> | null>();
  solvedIn.set(soil.images, solvers);
  const key = JSON.stringify([asked, figures]);
  const kept = solvers.get(key);
  const solver = kept === undefined ? solverOf(asked, figures) : kept;
  solvers.set(key, solver);
  const solved = solver?.(soil);
  return solved?.ok ? solved.aloneOhm[0]! : null;
}

/** The estimate is three times what halving the pieces costs: rods are within 0.25 % without being cut again. */
export const aloneErrorShare = 0.01;

function solverOf({ shape, way }: Asked, figures: Figures): ReturnType<typeof scaledSolver> | null {
  const made = bodyOf(shape, figures, { at: [0, 0], ...way });
  return made.ok ? scaledSolver([made.body], { errorShare: aloneErrorShare }) : null;
}
