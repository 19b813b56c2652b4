import type { Interval } from '../units/interval.ts';
import type { FigureSource } from './figure-source.ts';
import { notNegative, within } from './positive.ts';

/** A published fit of flashes to ground to thunder days: factor Td^power, per square kilometre and year. */
export interface ThunderDayFit {
  readonly factor: number;
  readonly power: number;
  readonly source: FigureSource;
}

/** Four fits; they part by a factor of two at 40 days and of three at 10, so the band is the answer. */
export const thunderDayFits: readonly ThunderDayFit[] = [
  fitted(0.04, 1.25, 'CIGRE and IEEE', 'memory'),
  fitted(0.1, 1, 'IEC 62305-2:2010', 'memory'),
  fitted(0.023, 1.3, 'lecture notes on thunder days, fit for South Africa', 'read'),
  fitted(0.012, 1.4, 'notes of a national weather bureau on flash density', 'read'),
];

/** Flashes to ground per square kilometre and year from thunder days a year: least and greatest of the fits. */
export function flashDensityFromThunderDays(daysPerYear: number): Interval {
  const days = within(daysPerYear, 0, 366, 'thunder days');
  const found = thunderDayFits.map(({ factor, power }) => factor * days ** power);
  return { low: Math.min(...found), high: Math.max(...found) };
}

/**
 * Flashes to ground from all flashes that a satellite or an instrument counts, per square kilometre and year: a quarter (IEC
 * 62858, from memory) to a third (notes of a national weather bureau, read).
 */
export function flashDensityFromTotal(totalPerKm2Year: number): Interval {
  const total = notNegative(totalPerKm2Year, 'flash density');
  return { low: total / 4, high: total / 3 };
}

function fitted(
  factor: number,
  power: number,
  document: string,
  provenance: FigureSource['provenance'],
): ThunderDayFit {
  return { factor, power, source: { document, edition: null, clause: 'thunder days to flash density', provenance } };
}
