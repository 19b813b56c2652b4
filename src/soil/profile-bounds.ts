import { type Interval, middle } from '../math/interval.ts';
import { greatestContrast, type LayeredSoil, layeredSoil, resistivityLimitsOhmM } from './layered-soil.ts';
import type { SoilLayers } from './layers.ts';
import { type ProfilePiece, simplerProfile } from './simpler-profile.ts';

/** A change of resistivity from the surface (or the foot of the zone above, where that is deeper) down to a depth. */
export interface SoilZone {
  readonly footM: Interval;
  /** Resistivity there over that of the layer itself. */
  readonly ratio: Interval;
}

/** The plain soils that enclose a soil known by ranges. */
export interface ProfileBounds {
  /** At no depth of more resistivity than any admitted soil; null: there is no such soil above 1e-3 ohm metre. */
  readonly low: LayeredSoil | null;
  /** At no depth of less; null: there is none below 1e8 ohm metre. */
  readonly high: LayeredSoil | null;
  /** All ranges at their middles (or the figures that a layer names as likely); null where one is open, a thickness is unknown or they are too far apart. */
  readonly likely: LayeredSoil | null;
  /**
   * Stretches that were taken together with a neighbour since too thin or too many, and those brought nearer to the rest in
   * resistivity since more than 1e6 times apart, all outward; 0: the bounds are sharp.
   */
  readonly merged: number;
  /** Those of `merged` that were brought nearer in resistivity. */
  readonly moved: number;
}

/**
 * Bounds of layers whose resistivities and thicknesses are ranges, with changed zones from the surface down over them: at
 * every depth the least and the greatest resistivity that any combination of admitted figures has there. A boundary of
 * unknown depth may be anywhere below the boundary over it. Resistance to earth rises with resistivity everywhere, so that of
 * an electrode in any admitted soil lies between those in the two bounds.
 *
 * Source: Rayleigh's theorem on resistances (J. C. Maxwell, A Treatise on Electricity and Magnetism, article 306, from
 * memory); that the combinations are met sharply at each depth is ours.
 */
export function profileBounds(layers: SoilLayers, zones: readonly SoilZone[] = []): ProfileBounds {
  if (layers.length === 0) throw new RangeError('no layer of soil');
  const spans = { layers: layerSpans(layers), zones: zoneSpans(zones) };
  const low = boundOf(spans, 'low');
  const high = boundOf(spans, 'high');
  const moved = low.moved + high.moved;
  const merged = low.merged + high.merged + moved;
  return { low: low.soil, high: high.soil, likely: likelyOf(layers, zones), merged, moved };
}

/** Depths between which something may lie, and what it may be there. */
interface Span {
  readonly fromM: number;
  readonly toM: number;
  readonly range: Interval;
}

interface Spans {
  readonly layers: readonly Span[];
  readonly zones: readonly Span[];
}

const anywhere: Interval = { low: 0, high: Number.POSITIVE_INFINITY };

function layerSpans(layers: SoilLayers): readonly Span[] {
  let [leastTopM, greatestTopM] = [0, 0];
  return layers.map(({ resistivityOhmM, thicknessM }, at) => {
    const isLast = at === layers.length - 1;
    const thick = thicknessM ?? anywhere;
    const span = { fromM: leastTopM, toM: isLast ? anywhere.high : greatestTopM + thick.high, range: resistivityOhmM };
    leastTopM += thick.low;
    greatestTopM += thick.high;
    return span;
  });
}

function zoneSpans(zones: readonly SoilZone[]): readonly Span[] {
  let leastTopM = 0;
  const spans = zones.map(({ footM, ratio }) => {
    const span = { fromM: leastTopM, toM: footM.high, range: ratio };
    leastTopM = Math.max(leastTopM, footM.low);
    return span;
  });
  return [...spans, { fromM: leastTopM, toM: anywhere.high, range: { low: 1, high: 1 } }];
}

type Side = 'low' | 'high';

interface Bound {
  readonly soil: LayeredSoil | null;
  readonly merged: number;
  /** Stretches of another resistivity than asked for. */
  readonly moved: number;
}

function boundOf(spans: Spans, side: Side): Bound {
  const cuts = new Set([0]);
  for (const { fromM, toM } of [...spans.layers, ...spans.zones]) {
    for (const depthM of [fromM, toM]) if (Number.isFinite(depthM)) cuts.add(depthM);
  }
  const tops = [...cuts].sort((a, b) => a - b);
  const pieces = tops.map((topM, at) => {
    const footM = tops[at + 1] ?? anywhere.high;
    const within = (all: readonly Span[]): number => extreme(all, topM, footM, side);
    return { ohmM: within(spans.layers) * within(spans.zones), thickM: footM - topM };
  });
  const { low, high } = resistivityLimitsOhmM;
  if (!pieces.every(({ ohmM }) => ohmM >= low && ohmM <= high)) return { soil: null, merged: 0, moved: 0 };
  const near = nearer(pieces, side);
  const moved = near.filter(({ ohmM }, at) => ohmM !== pieces[at]!.ohmM).length;
  const { profile, merged } = simplerProfile(near, side === 'low' ? Math.min : Math.max);
  return {
    soil: layeredSoil(
      profile.map((p) => p.ohmM),
      profile.slice(0, -1).map((p) => p.thickM),
    ),
    merged,
    moved,
  };
}

/** Resistivities further apart than a potential is worked out for, brought nearer to the side of the bound. */
function nearer(pieces: readonly ProfilePiece[], side: Side): readonly ProfilePiece[] {
  const all = pieces.map(({ ohmM }) => ohmM);
  const [least, greatest] = [Math.min(...all), Math.max(...all)];
  const within = (ohmM: number): number =>
    side === 'low' ? Math.min(ohmM, least * greatestContrast) : Math.max(ohmM, greatest / greatestContrast);
  return pieces.map(({ ohmM, thickM }) => ({ ohmM: within(ohmM), thickM }));
}

/** Of all that may lie in a stretch of depth (which no span begins or ends inside of). */
function extreme(all: readonly Span[], topM: number, footM: number, side: Side): number {
  const there = all.filter(({ fromM, toM }) => fromM <= topM && toM >= footM).map(({ range }) => range[side]);
  return side === 'low' ? Math.min(...there) : Math.max(...there);
}

function likelyOf(layers: SoilLayers, zones: readonly SoilZone[]): LayeredSoil | null {
  const exactly = (range: Interval | null, likely?: number | null): Interval => {
    const figure = likely ?? (range === null ? null : middle(range));
    return figure === null ? open : { low: figure, high: figure };
  };
  const spans = {
    layers: layerSpans(
      layers.map(({ resistivityOhmM, thicknessM, likely }, at) => ({
        resistivityOhmM: exactly(resistivityOhmM, likely?.resistivityOhmM),
        thicknessM: at === layers.length - 1 ? null : exactly(thicknessM, likely?.thicknessM),
      })),
    ),
    zones: zoneSpans(zones.map(({ footM, ratio }) => ({ footM: exactly(footM), ratio: exactly(ratio) }))),
  };
  const isOpen = [...spans.layers, ...spans.zones].some(({ fromM, range }) => Number.isNaN(fromM + range.low));
  if (isOpen) return null;
  const { soil, moved } = boundOf(spans, 'low');
  return moved > 0 ? null : soil;
}

/** Stands for a range without a middle. */
const open: Interval = { low: Number.NaN, high: Number.NaN };
