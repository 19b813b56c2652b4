import type { Interval } from '../units/interval.ts';
import { type Citation, cite } from './source.ts';

/** Resistivity of soil by moisture: two soils from one booklet, read as ratios. */
export const moistureSource: Citation = cite(
  'booklet on earth testing: top soil and sandy loam, after P. J. Higgs',
  null,
  'resistivity by moisture',
  'memory',
);

/** Ohm metre by per cent of moisture (of dry weight). With none at all it is above 1e7. */
const curves: readonly (readonly [percent: number, topSoil: number, sandyLoam: number])[] = [
  [2.5, 2500, 1500],
  [5, 1650, 430],
  [10, 530, 185],
  [15, 190, 105],
  [20, 120, 63],
  [30, 64, 42],
];

/** Where the curves begin and end, per cent. */
export const moistureLimits = { low: 2.5, high: 30 } as const;

/**
 * Resistivity at a moisture over that at another, both in per cent by weight. The range is the spread between the two soils.
 * null where one of the two lies outside 2.5 to 30 %: no figures.
 */
export function moistureRatio(percent: number, againstPercent: number): Interval | null {
  if (!isWithin(percent) || !isWithin(againstPercent)) return null;
  const [topSoil, sandyLoam] = ([1, 2] as const).map((soil) => along(soil, percent) / along(soil, againstPercent));
  return { low: Math.min(topSoil!, sandyLoam!), high: Math.max(topSoil!, sandyLoam!) };
}

function isWithin(percent: number): boolean {
  return percent >= moistureLimits.low && percent <= moistureLimits.high;
}

/** Straight between two points, both on the logarithm. */
function along(soil: 1 | 2, percent: number): number {
  const above = Math.max(
    1,
    curves.findIndex(([at]) => at >= percent),
  );
  const [from, to] = [curves[above - 1]!, curves[above]!];
  const share = Math.log(percent / from[0]) / Math.log(to[0] / from[0]);
  return from[soil] * (to[soil] / from[soil]) ** share;
}
