import { type Interval, middle } from '../math/interval.ts';
import type { SoilLayers } from '../soil/layers.ts';
import { closedFormOf } from './closed-form-of.ts';
import type { ElectrodeShape, Figure, FormulaSource } from './electrode.ts';
import { type ElectrodeResistance, likelyFigures } from './electrode-resistance.ts';
import { overRange } from './over-range.ts';
import { resistivityAlong, resistivityBounds } from './resistivity-along.ts';
import { mutualOfRods } from './rod.ts';

/**
 * Mutual resistance of two electrodes (ohm) at a distance between their centres: what an ampere into one lifts the other
 * by. Two upright rods of any lengths by Dwight's closed form; anything else as two points, from one extent of the larger
 * on. `low` and `high` are for the ranges of all figures and uniform soil of the lowest and the highest resistivity of any
 * layer, which is rigorous for uniform soil alone; `value` takes the layers down to the foot of the deeper one or the
 * distance, whichever is more, in proportion to their thickness.
 */
export function mutualResistance(
  a: ElectrodeShape,
  b: ElectrodeShape,
  distanceM: Figure,
  soil: SoilLayers,
): ElectrodeResistance {
  const rods = isUpright(a) && isUpright(b);
  const answer = { ohm: null, missing: [], outOfRange: [], errorShare: null, ...(rods ? asRods : asPoints) };
  const figures = gather(a, b, distanceM, rods);
  const soilOhmM = resistivityBounds(soil);
  const missing = Object.keys(figures).filter((name) => figures[name] === null);
  if (soilOhmM === null) missing.push('soil.layers');
  if (missing.length > 0 || soilOhmM === null) return { ...answer, missing };
  const ranges = figures as Readonly<Record<string, Interval>>;
  const likely = likelyFigures(ranges);
  const perOhmM = rods ? perOhmMOfRods : perOhmMOfPoints;
  const value = perOhmM(likely);
  const bounds = boundsOf(ranges, perOhmM, soilOhmM);
  if (value === null || bounds === null) return { ...answer, outOfRange: ['distanceM'] };
  const along = resistivityAlong(soil, 0, Math.max(likely.distanceM!, footOf(likely)));
  const isOpen = Object.values(ranges).some((range) => middle(range) === null);
  return {
    ...answer,
    missing: along.ok ? [] : [along.missing],
    errorShare: rods ? { low: -0.02, high: 0 } : pointError(likely),
    ohm: {
      value: isOpen || !along.ok || along.ohmM === null ? null : value * along.ohmM,
      ...bounds,
    },
  };
}

type Answer = Pick<ElectrodeResistance, 'formula' | 'source'>;

const source: FormulaSource = {
  document: 'H. B. Dwight, Calculation of resistances to ground, Trans. AIEE 55, 1319-1328',
  edition: '1936',
  clause: null,
  provenance: 'memory',
};
const asRods: Answer = {
  formula:
    'rho / (2 pi L) (ln((2 L + q) / s) + s / (2 L) - q / (2 L)), q = sqrt(s^2 + 4 L^2), or the same for unequal rods',
  source,
};
const asPoints: Answer = { formula: 'rho / (2 pi D)', source };

type Upright = Extract<ElectrodeShape, { kind: 'rod' | 'well casing' | 'drilled rod' }>;

function isUpright(shape: ElectrodeShape): shape is Upright {
  return shape.kind === 'rod' || shape.kind === 'well casing' || shape.kind === 'drilled rod';
}

function gather(a: ElectrodeShape, b: ElectrodeShape, distanceM: Figure, rods: boolean): Record<string, Figure> {
  if (rods && isUpright(a) && isUpright(b)) {
    return { distanceM, aLengthM: a.lengthM, aTopM: a.topM, bLengthM: b.lengthM, bTopM: b.topM };
  }
  return { distanceM, aExtentM: extentOf(a), bExtentM: extentOf(b) };
}

/** null where what it takes is unknown. */
function extentOf(shape: ElectrodeShape): Figure {
  const form = closedFormOf(shape);
  if (form.alsoMissing.length > 0 || Object.values(form.figures).includes(null)) return null;
  const ranges = Object.entries(form.figures as Readonly<Record<string, Interval>>);
  const end = (side: 'low' | 'high'): number =>
    form.extentM(Object.fromEntries(ranges.map(([name, range]) => [name, range[side]])));
  return { low: end('low'), high: end('high') };
}

type Figures = Readonly<Record<string, number>>;

function perOhmMOfRods(f: Figures): number | null {
  const a = { lengthM: f.aLengthM!, topM: f.aTopM! };
  const b = { lengthM: f.bLengthM!, topM: f.bTopM! };
  return f.distanceM! > 0 && a.lengthM > 0 && b.lengthM > 0 ? mutualOfRods(a, b, f.distanceM!) : null;
}

function perOhmMOfPoints(f: Figures): number | null {
  const reachM = Math.max(f.aExtentM!, f.bExtentM!);
  return f.distanceM! > 0 && f.distanceM! >= reachM ? 1 / (2 * Math.PI * f.distanceM!) : null;
}

function footOf(f: Figures): number {
  return f.aLengthM === undefined ? 0 : Math.max(f.aLengthM + f.aTopM!, f.bLengthM! + f.bTopM!);
}

/** Two rods 17 % lower, two wires end to end 39 % higher, one extent apart; two extents apart 7 % and 5 %. */
function pointError(f: Figures): Interval {
  const isFar = f.distanceM! >= 2 * Math.max(f.aExtentM!, f.bExtentM!);
  return isFar ? { low: -0.07, high: 0.05 } : { low: -0.18, high: 0.39 };
}

/** null where the ranges reach into what the form does not hold for. */
function boundsOf(
  ranges: Readonly<Record<string, Interval>>,
  perOhmM: (figures: Figures) => number | null,
  soil: Interval,
): Interval | null {
  const { range, open } = overRange(ranges, (figures) => {
    const share = perOhmM(figures);
    return share === null ? null : { low: share * soil.low, high: share * soil.high };
  });
  if (range !== null) return open.length > 0 ? { low: 0, high: range.high } : range;
  // a rod that may be of no length: no two rods are nearer to each other than two points at grade
  const nearestM = ranges.distanceM!.low;
  return perOhmM === perOhmMOfRods && nearestM > 0 ? { low: 0, high: soil.high / (2 * Math.PI * nearestM) } : null;
}
