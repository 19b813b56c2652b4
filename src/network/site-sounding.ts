import type { Reading, Site } from '../site/site.ts';
import { apparentResistivity } from '../soil/apparent-resistivity.ts';
import { fitSounding } from '../soil/fit-sounding.ts';
import { layeredSoil } from '../soil/layered-soil.ts';
import type { SoundingFit } from '../soil/sounding-fit.ts';
import { pinsInLine, type SoundingPins, wennerPins } from '../soil/sounding-pins.ts';
import type { SoundingReading } from '../soil/sounding-reading.ts';
import { type Interval, middle } from '../units/interval.ts';

/** All four-pin readings of a site as one sounding, and the soil that they carry. */
export interface SiteSounding {
  /** For each reading of `fit`, in its order: the id of the owner's reading, and the spacing to show it at. */
  readonly points: readonly { readonly reading: string; readonly spacingM: number }[];
  readonly fit: SoundingFit;
  /** What evenly spaced pins would read over the fitted soil, by rising spacing; [] where nothing fits. */
  readonly curve: readonly { readonly spacingM: number; readonly ohmM: number }[];
}

/** Fitted once for a site: its readings do not change with its state. */
const fitted = new WeakMap<readonly Reading[], SiteSounding | null>();

/** null: no four-pin reading with a spacing and a figure. */
export function siteSounding({ readings }: Pick<Site, 'readings'>): SiteSounding | null {
  const kept = fitted.get(readings);
  if (kept !== undefined) return kept;
  const all = readings.filter((r) => r.kind === 'four-pin').flatMap(pointsOf);
  const made = all.length === 0 ? null : soundingOf(all);
  fitted.set(readings, made);
  return made;
}

function soundingOf(all: readonly Point[]): SiteSounding {
  const fit = fitSounding(all.map(({ pins, resistanceOhm }) => ({ pins, resistanceOhm })));
  return { points: all.map(({ reading, spacingM }) => ({ reading, spacingM })), fit, curve: curveOf(all, fit) };
}

/** Points of the curve, from a little under the least spacing to a little over the greatest. */
const curvePoints = 41;

function curveOf(all: readonly Point[], { layers }: SoundingFit): SiteSounding['curve'] {
  if (layers.length === 0) return [];
  const spacings = all.map((p) => p.spacingM);
  const [from, to] = [Math.min(...spacings) / 1.5, Math.max(...spacings) * 1.5];
  const at = Array.from({ length: curvePoints }, (_, k) => from * (to / from) ** (k / (curvePoints - 1)));
  const soil = layeredSoil(
    layers.map((l) => l.resistivityOhmM.value),
    layers.slice(0, -1).map((l) => l.thicknessM!.value),
  );
  const ohmM = apparentResistivity(
    soil,
    at.map((spacingM) => wennerPins(spacingM)),
  );
  return at.map((spacingM, k) => ({ spacingM, ohmM: ohmM[k]! }));
}

interface Point extends SoundingReading {
  readonly reading: string;
  readonly spacingM: number;
}

/** Each figure with its spacing, or its four pins; a figure or a spacing too many is left out. */
function pointsOf({ id, spacingM, pins, resistance }: Reading): readonly Point[] {
  const arrangements = [...spacingM.map(evenPins), ...pins.map(unevenPins)];
  return resistance.flatMap(({ ohm, overRange }, at): Point[] => {
    const placed = arrangements[at];
    const figure = overRange ? 'over range' : middle(ohm);
    return placed == null || figure === null ? [] : [{ reading: id, ...placed, resistanceOhm: figure }];
  });
}

interface Placed {
  readonly pins: SoundingPins;
  readonly spacingM: number;
}

function evenPins(spacing: Interval): Placed | null {
  const spacingM = middle(spacing);
  return spacingM === null ? null : { pins: wennerPins(spacingM), spacingM };
}

/** Shown at a third of the outer pins' distance: where as far apart evenly spaced ones would stand. */
function unevenPins(row: readonly Interval[]): Placed | null {
  const places = row.map(middle).filter((place) => place !== null);
  if (places.length !== 4) return null;
  const pins = pinsInLine(places as [number, number, number, number]);
  const [a, b] = pins.currentM;
  return { pins, spacingM: (b - a) / 3 };
}
