import type { Interval } from '../units/interval.ts';
import { type Citation, cite } from './source.ts';

/**
 * A gas tube by its nominal DC spark-over. Typical of the trade, not of any one tube: every figure but the nominal one may be
 * off by a fifth either way (`confidence`). A tube's own data go before it.
 */
export interface GasTube {
  readonly nominalV: number;
  /** Where tubes of that name fire on a slow rise, 100 V/s to 2 kV/s. */
  readonly dcSparkOverV: Interval;
  /** What data sheets give as the most on a rise of 100 V/us, and of 1 kV/us: from tube to tube. */
  readonly mostAt100VPerUsV: Interval;
  readonly mostAt1kVPerUsV: Interval;
  readonly glowV: Interval;
  readonly arcV: Interval;
  /** A voltage that stays above this keeps it conducting. */
  readonly holdoverV: number;
  readonly confidence: 'low';
  readonly doubtShare: number;
  readonly source: Citation;
}

const typical = cite(
  'component figures in the terms of ITU-T K.12 and IEC 61643-311; the table itself was not seen',
  null,
  null,
  'memory',
);

/** From the lowest nominal voltage up. */
export const gasTubes: readonly GasTube[] = [
  tube(90, [72, 108], [450, 550], [550, 700], [60, 80], [10, 20], 50),
  tube(150, [120, 180], [450, 550], [600, 700], [60, 80], [10, 20], 80),
  tube(230, [184, 276], [450, 600], [600, 750], [60, 100], [10, 25], 135),
  tube(350, [280, 420], [650, 800], [800, 1000], [60, 150], [10, 25], 150),
  tube(600, [480, 720], [1000, 1200], [1200, 1500], [100, 200], [10, 30], 150),
];

/** The tube of that nominal voltage; null when the table has none: nothing is made up between its rows. */
export function gasTubeOf(nominalV: number): GasTube | null {
  return gasTubes.find((t) => t.nominalV === nominalV) ?? null;
}

/** Spark-over against the steepness of the rise, from slow to fast; volts and volts per second. */
export interface SparkOverPoint {
  readonly slopeVPerS: number;
  readonly sparkOverV: Interval;
}

/**
 * The same tube as points of spark-over against steepness. Data sheets limit the high side alone: on a fast rise the low side
 * stays that of the slow one.
 */
export function sparkOverPoints({
  dcSparkOverV,
  mostAt100VPerUsV,
  mostAt1kVPerUsV,
}: GasTube): readonly SparkOverPoint[] {
  const from = dcSparkOverV.low;
  return [
    { slopeVPerS: 2e3, sparkOverV: dcSparkOverV },
    { slopeVPerS: 100e6, sparkOverV: { low: from, high: mostAt100VPerUsV.high } },
    { slopeVPerS: 1e9, sparkOverV: { low: from, high: mostAt1kVPerUsV.high } },
  ];
}

type Pair = readonly [low: number, high: number];

function tube(
  nominalV: number,
  dc: Pair,
  most100: Pair,
  most1k: Pair,
  glow: Pair,
  arc: Pair,
  holdoverV: number,
): GasTube {
  return {
    nominalV,
    dcSparkOverV: range(dc),
    mostAt100VPerUsV: range(most100),
    mostAt1kVPerUsV: range(most1k),
    glowV: range(glow),
    arcV: range(arc),
    holdoverV,
    confidence: 'low',
    doubtShare: 0.2,
    source: typical,
  };
}

function range([low, high]: Pair): Interval {
  return { low, high };
}
