import type { Interval } from '../units/interval.ts';
import { type Citation, cite } from './source.ts';

/**
 * Resistivity of soil by its temperature. Only ratios are taken from the published curves: their absolute figures are those
 * of one sandy loam each, and differ.
 */
export const temperatureSource: Citation = cite(
  'booklet on earth testing: table of a sandy loam with 15.2 % of moisture; IEEE Std 80, figure 18, as quoted',
  null,
  'resistivity by temperature',
  'second-hand',
);

/** Ohm metre of the table, thawed: by degrees C. */
const thawedTable: Curve = [
  [0, 138],
  [10, 99],
  [20, 72],
];
/** Frozen, against the same soil thawed at 0 C: the table (138 ohm m thawed), and the figure (150). */
const frozenTable: Curve = [
  [-15, 3300 / 138],
  [-5, 790 / 138],
  [0, 300 / 138],
];
const frozenFigure: Curve = [
  [-15, 5000 / 150],
  [-5, 1500 / 150],
  [0, 350 / 150],
];

/** Share of its conductivity at 20 C that soil gains per degree: an instrument's appendix (read). */
const gainPerDegree = 0.025;
/** Where the curves end, degrees C. */
export const temperatureLimitsC = { low: -15, high: 40 } as const;

type Curve = readonly (readonly [celsius: number, figure: number])[];

/**
 * Resistivity at a temperature over that at 20 C. The range is the spread between the two published curves, above freezing
 * between the table and 1 / (1 + 0.025 (t - 20)); at 0 C, where soil may be thawed or frozen, from the one to the other.
 * null outside -15 to 40 C: no figures.
 */
export function temperatureRatio(celsius: number): Interval | null {
  if (!isWithin(celsius)) return null;
  if (celsius > 0) return thawedRatio(celsius);
  const thawed = thawedRatio(0);
  const frozen = frozenRatioAt(celsius)!;
  return { low: thawed.low * (celsius === 0 ? 1 : frozen.low), high: thawed.high * frozen.high };
}

/**
 * Frozen soil at a temperature of 0 C or less over the same soil thawed at 0 C. Range: the two published curves. null below
 * -15 C and above 0 C.
 */
export function frozenRatioAt(celsius: number): Interval | null {
  if (!isWithin(celsius) || celsius > 0) return null;
  const [table, figure] = [along(frozenTable, celsius), along(frozenFigure, celsius)];
  return { low: Math.min(table, figure), high: Math.max(table, figure) };
}

function isWithin(celsius: number): boolean {
  return celsius >= temperatureLimitsC.low && celsius <= temperatureLimitsC.high;
}

function thawedRatio(celsius: number): Interval {
  const byGain = 1 / (1 + gainPerDegree * (celsius - 20));
  // the table ends at 20 C
  if (celsius > 20) return { low: byGain, high: byGain };
  const byTable = along(thawedTable, celsius) / along(thawedTable, 20);
  return { low: Math.min(byGain, byTable), high: Math.max(byGain, byTable) };
}

/** Between two points of a curve: straight on the logarithm. */
function along(curve: Curve, celsius: number): number {
  const above = Math.max(
    1,
    curve.findIndex(([at]) => at >= celsius),
  );
  const [[fromC, from], [toC, to]] = [curve[above - 1]!, curve[above]!];
  const share = (celsius - fromC) / (toC - fromC);
  return Math.exp(Math.log(from) + share * (Math.log(to) - Math.log(from)));
}
