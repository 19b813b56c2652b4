import type { FigureSource } from './figure-source.ts';
import { type Stroke, type StrokeKind, stroke } from './stroke.ts';
import { figureExceededBy, type StrokeDistribution } from './stroke-distribution.ts';

/** What a statistic counts. SI: ampere, second, ampere per second, coulomb, joule per ohm. */
export type StrokeQuantity = 'peakA' | 'frontS' | 'steepestAPerS' | 'chargeC' | 'specificEnergyJPerOhm' | 'tailS';

/** One published statistic of strokes. */
export interface StrokeStatistic {
  readonly id: string;
  /** `first-any`: first strokes of either polarity in one count. */
  readonly of: StrokeKind | 'first-any';
  readonly quantity: StrokeQuantity;
  readonly distribution: StrokeDistribution;
  readonly source: FigureSource;
}

const cigre549 = source('CIGRE TB 549, Lightning Parameters for Engineering Applications, its summary', '2013', 'read');
const cigre63 = source('CIGRE TB 63, guide to lightning performance of lines, two lognormal slopes', '1991', 'memory');
const ieee = source('IEEE working group on lightning performance of lines', '1985', 'memory');
const electra69 = source('R. B. Anderson, A. J. Eriksson, Electra 69', '1980', 'memory');
const electra41 = source('K. Berger, R. B. Anderson, H. Kroninger, Electra 41', '1975', 'memory');
const annexA = source('IEC 62305-1, annex A, probability of the peak', '2010', 'memory');

/** Published statistics, in a fixed order. */
export const strokeStatistics: readonly StrokeStatistic[] = [
  lognormal('cigre-549', 'first-negative', 'peakA', 30e3, 0.265 * Math.LN10, cigre549),
  {
    id: 'cigre-63',
    of: 'first-negative',
    quantity: 'peakA',
    distribution: {
      kind: 'two-slopes',
      joint: 20e3,
      below: { median: 61.1e3, sigmaLn: 1.33 },
      above: { median: 33.3e3, sigmaLn: 0.605 },
    },
    source: cigre63,
  },
  lognormal('cigre-63-subsequent', 'subsequent', 'peakA', 12.3e3, 0.53, cigre63),
  power('ieee', 'first-negative', 31e3, 2.6, ieee),
  power('ieee-subsequent', 'subsequent', 12e3, 2.7, ieee),
  lognormal('electra-69-peak', 'first-negative', 'peakA', 31.1e3, 0.484, electra69),
  lognormal('electra-69-front', 'first-negative', 'frontS', 3.83e-6, 0.553, electra69),
  lognormal('electra-69-steepness', 'first-negative', 'steepestAPerS', 24.3e9, 0.599, electra69),
  lognormal('electra-69-charge', 'first-negative', 'chargeC', 4.65, 0.882, electra69),
  lognormal('electra-69-energy', 'first-negative', 'specificEnergyJPerOhm', 0.057e6, 1.373, electra69),
  lognormal('electra-69-tail', 'first-negative', 'tailS', 77.5e-6, 0.577, electra69),
  lognormal('electra-69-subsequent-peak', 'subsequent', 'peakA', 12.3e3, 0.53, electra69),
  lognormal('electra-69-subsequent-front', 'subsequent', 'frontS', 0.67e-6, 1.013, electra69),
  lognormal('electra-69-subsequent-steepness', 'subsequent', 'steepestAPerS', 39.9e9, 0.852, electra69),
  lognormal('electra-69-subsequent-charge', 'subsequent', 'chargeC', 0.938, 0.882, electra69),
  lognormal('electra-69-subsequent-energy', 'subsequent', 'specificEnergyJPerOhm', 0.0055e6, 1.366, electra69),
  lognormal('electra-69-subsequent-tail', 'subsequent', 'tailS', 30.2e-6, 0.933, electra69),
  percentiles('electra-41-peak', 'first-negative', 'peakA', 14e3, 30e3, 80e3),
  percentiles('electra-41-steepness', 'first-negative', 'steepestAPerS', 5.5e9, 12e9, 32e9),
  percentiles('electra-41-energy', 'first-negative', 'specificEnergyJPerOhm', 6e3, 5.5e4, 5.5e5),
  percentiles('electra-41-subsequent-peak', 'subsequent', 'peakA', 4.6e3, 12e3, 30e3),
  percentiles('electra-41-subsequent-steepness', 'subsequent', 'steepestAPerS', 12e9, 40e9, 120e9),
  percentiles('electra-41-subsequent-energy', 'subsequent', 'specificEnergyJPerOhm', 5.5e2, 6e3, 5.2e4),
  percentiles('electra-41-positive-peak', 'first-positive', 'peakA', 4.6e3, 35e3, 250e3),
  percentiles('electra-41-positive-steepness', 'first-positive', 'steepestAPerS', 0.2e9, 2.4e9, 32e9),
  percentiles('electra-41-positive-energy', 'first-positive', 'specificEnergyJPerOhm', 2.5e4, 6.5e5, 1.5e7),
  {
    id: 'iec-annex-a',
    of: 'first-any',
    quantity: 'peakA',
    distribution: {
      kind: 'points',
      points: [
        [3e3, 0.99],
        [5e3, 0.95],
        [10e3, 0.9],
        [20e3, 0.8],
        [30e3, 0.6],
        [40e3, 0.4],
        [50e3, 0.3],
        [60e3, 0.2],
        [80e3, 0.1],
        [100e3, 0.05],
        [150e3, 0.02],
        [200e3, 0.01],
      ],
    },
    source: annexA,
  },
];

/** The statistic of that name; null when there is none. */
export function strokeStatistic(id: string): StrokeStatistic | null {
  return strokeStatistics.find((s) => s.id === id) ?? null;
}

/** The statistic of the peak that presets go by, for each kind. */
const usualPeak: Readonly<Record<StrokeKind, string>> = {
  'first-negative': 'cigre-549',
  subsequent: 'electra-69-subsequent-peak',
  'first-positive': 'electra-41-positive-peak',
};

/**
 * The stroke whose peak a share of strokes of its kind exceeds (0.5: the median), with the statistic that says so. The
 * wave is the standard's for its kind. null where the publication says nothing: positive ones beyond 5 and 95 %.
 */
export function strokeExceededBy(
  kind: StrokeKind,
  share: number,
): (Stroke & { readonly statistic: StrokeStatistic }) | null {
  const statistic = strokeStatistic(usualPeak[kind])!;
  const peakA = figureExceededBy(statistic.distribution, share);
  return peakA === null ? null : { ...stroke(kind, peakA), statistic };
}

function lognormal(
  id: string,
  of: StrokeKind,
  quantity: StrokeQuantity,
  median: number,
  sigmaLn: number,
  from: FigureSource,
): StrokeStatistic {
  return { id, of, quantity, distribution: { kind: 'lognormal', median, sigmaLn }, source: from };
}

function power(id: string, of: StrokeKind, median: number, exponent: number, from: FigureSource): StrokeStatistic {
  return { id, of, quantity: 'peakA', distribution: { kind: 'power', median, power: exponent }, source: from };
}

/** The figures that 95, 50 and 5 % of strokes exceed. */
function percentiles(
  id: string,
  of: StrokeKind,
  quantity: StrokeQuantity,
  by95: number,
  by50: number,
  by5: number,
): StrokeStatistic {
  const points = [
    [by95, 0.95],
    [by50, 0.5],
    [by5, 0.05],
  ] as const;
  return { id, of, quantity, distribution: { kind: 'points', points }, source: electra41 };
}

function source(document: string, edition: string, provenance: FigureSource['provenance']): FigureSource {
  return { document, edition, clause: null, provenance };
}
