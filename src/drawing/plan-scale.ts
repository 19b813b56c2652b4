import type { Point } from './svg.ts';

/** A point of the site seen from above: east, north, in metres. */
export type Ground = readonly [eastM: number, northM: number];

export interface PlanScale {
  /** Ratio of the site to the paper, 1:ratio. */
  readonly ratio: number;
  readonly heightMm: number;
  readonly toPaper: (at: Ground) => Point;
}

/** Ratios that people's rulers have: so many feet to the inch, and decimal ones. */
const ratios = {
  us: [12, 24, 48, 60, 96, 120, 180, 240, 300, 360, 480, 600, 720, 1200, 2400, 4800, 6000, 12000, 24000],
  si: [10, 20, 25, 50, 75, 100, 150, 200, 250, 300, 400, 500, 1000, 2000, 2500, 5000, 10000, 20000, 25000],
};

const sideMm = 15;
const endMm = 13;
const usualTallestMm = 150;
const usualLowestMm = 70;

/**
 * The largest usual scale at which all points fit on a sheet `widthMm` wide and at most 150 mm high (or as high as told),
 * with room round them for labels. The points are centred; a site larger than the last scale holds gets a scale of its own.
 */
export function planScale(
  points: readonly Ground[],
  widthMm: number,
  units: 'us' | 'si',
  tallestMm = usualTallestMm,
): PlanScale {
  const east = extent(points.map((p) => p[0]));
  const north = extent(points.map((p) => p[1]));
  const needed = 1000 * Math.max(east.size / (widthMm - 2 * sideMm), north.size / (tallestMm - 2 * endMm));
  const ratio = ratios[units].find((r) => r >= needed) ?? Math.ceil(needed / 1000) * 1000;
  const heightMm = Math.max(Math.min(usualLowestMm, tallestMm), (north.size * 1000) / ratio + 2 * endMm);
  const toPaper = ([e, n]: Ground): Point => [
    widthMm / 2 + ((e - east.middle) * 1000) / ratio,
    heightMm / 2 - ((n - north.middle) * 1000) / ratio,
  ];
  return { ratio, heightMm, toPaper };
}

function extent(values: readonly number[]) {
  const low = values.reduce((least, v) => Math.min(least, v), Infinity);
  const high = values.reduce((most, v) => Math.max(most, v), -Infinity);
  return { size: high - low, middle: (low + high) / 2 };
}
