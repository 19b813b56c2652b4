import type { BondingRun } from '../bonding/bonding-of.ts';
import { depthCurve } from '../electrodes/depth-curve.ts';
import type { ScaledSoil } from '../electrodes/scaled-soil.ts';
import { rodsInLine, type SpacingGain, spacingGains } from '../electrodes/spacing-gain.ts';
import type { Electrode } from '../site/site.ts';
import type { SoilImages } from '../soil/layer-images.ts';
import { middle } from '../units/interval.ts';
import type { EarthCondition } from './earth-conditions.ts';
import { type GroundSurface, groundSurfaces } from './ground-surface.ts';

/** What somebody asks of the soil beside what stands in it: deeper, one more, and how the surface around lies. */
export interface SoilAnswers {
  readonly depthCurves: readonly {
    readonly electrode: string;
    /** Of the ground; see `EarthCondition`. */
    readonly condition: string;
    readonly lengthM: number;
    readonly points: readonly {
      readonly lengthM: number;
      readonly ohm: { readonly value: number | null; readonly low: number; readonly high: number };
    }[];
  }[];
  readonly spacingGains: readonly { readonly electrode: string; readonly points: readonly SpacingGain[] }[];
  /** Resistance of one, two, three and so on in a straight line, joined; null where they cannot be solved. */
  readonly rodLines: readonly {
    readonly electrode: string;
    readonly spacingM: number;
    readonly ohm: readonly (number | null)[];
  }[];
  readonly surfaces: readonly GroundSurface[];
}

export const noAnswers: SoilAnswers = { depthCurves: [], spacingGains: [], rodLines: [], surfaces: [] };

/** Lengths of rods in steps of the trade's, metres: couplings of 4, 5, 8 and 10 ft. Common practice, no source. */
const triedLengthsM = [1.2, 1.8, 2.4, 3, 4.9, 6.1, 9.1, 12.2, 18.3];
/** Distances of the next rod, in lengths of the first. */
const triedSpacings = [0.25, 0.5, 1, 1.5, 2, 3, 4];
/** Rods in one line: as many as somebody drives, and how far apart in lengths of the first. Common practice, no source. */
const mostInLine = 6;
const lineSpacing = 2;

/**
 * For each size of rod its resistance against depth (the first size in every condition, the first of which is the ground as
 * it is) and what a second one brings; the surface round each group of electrodes with places.
 */
export function soilAnswers(run: BondingRun, conditions: readonly EarthCondition[]): SoilAnswers {
  const { ground } = conditions[0]!;
  const { images } = ground;
  if (images === null || images.likely === null) return noAnswers;
  const rods = rodSizes(run.site.electrodes);
  const curves = rods.flatMap((rod, size) =>
    conditions.slice(0, size === 0 ? conditions.length : 1).flatMap((c) => curveIn(rod, c)),
  );
  return {
    depthCurves: curves,
    spacingGains: rods.map(({ id, ...rod }) => {
      const spacings = triedSpacings.map((times) => times * rod.lengthM);
      return { electrode: id, points: spacingGains(rod, spacings, images.likely!) };
    }),
    rodLines: rods.map(({ id, ...rod }) => {
      const spacingM = lineSpacing * rod.lengthM;
      return { electrode: id, spacingM, ohm: rodsInLine(rod, spacingM, mostInLine, images.likely!) };
    }),
    surfaces: groundSurfaces(run, ground),
  };
}

function curveIn({ id, lengthM, radiusM, topM }: RodSize, { id: condition, ground }: EarthCondition) {
  if (ground.images === null) return [];
  const others = triedLengthsM.filter((tried) => Math.abs(tried / lengthM - 1) > 0.05);
  const lengths = [...others, lengthM].sort((a, b) => a - b);
  const { low, likely, high } = ground.images;
  // soils that differ by a factor alone share their images, and so all but that factor
  const solved = new Map<SoilImages, readonly (number | null)[]>();
  const at = (soil: ScaledSoil | null): readonly (number | null)[] => {
    if (soil === null) return [];
    const { images, factor } = soil;
    const unit = solved.get(images) ?? depthCurve({ radiusM, topM }, lengths, { images, factor: 1 });
    solved.set(images, unit);
    return unit.map((ohm) => (ohm === null ? null : ohm * factor));
  };
  const [values, lows, highs] = [at(likely), at(low), at(high)];
  const points = lengths.flatMap((length, i) => {
    const value = values[i] ?? null;
    if (value === null) return [];
    return [{ lengthM: length, ohm: { value, low: lows[i] ?? 0, high: highs[i] ?? Number.POSITIVE_INFINITY } }];
  });
  return points.length === 0 ? [] : [{ electrode: id, condition, lengthM, points }];
}

interface RodSize {
  readonly id: string;
  readonly lengthM: number;
  readonly radiusM: number;
  readonly topM: number;
}

/** 5/8 in: the usual rod. Common practice, no source; the resistance hardly depends on it. */
const usualRadiusM = 0.0079;
const mostSizes = 3;

/** The first rod of each size. */
function rodSizes(electrodes: readonly Electrode[]): readonly RodSize[] {
  const sizes = new Map<string, RodSize>();
  for (const e of electrodes) {
    const lengthM = e.lengthM === null ? null : middle(e.lengthM);
    if ((e.kind !== 'rod' && e.kind !== 'rods') || e.present === 'no' || lengthM === null) continue;
    const radiusM = (e.diameterM === null ? null : middle(e.diameterM)) ?? 2 * usualRadiusM;
    const topM = (e.topM === null ? null : middle(e.topM)) ?? 0;
    // a head that stands out of the ground is no metal in the soil
    const rod = { id: e.id, lengthM: lengthM + Math.min(0, topM), radiusM: radiusM / 2, topM: Math.max(0, topM) };
    const key = `${rod.lengthM.toFixed(2)} ${rod.topM.toFixed(2)}`;
    if (!sizes.has(key) && rod.lengthM > 4 * rod.radiusM) sizes.set(key, rod);
  }
  return [...sizes.values()].sort((a, b) => (a.id < b.id ? -1 : 1)).slice(0, mostSizes);
}
