import type { FigureSource } from './figure-source.ts';

/** One line of a table of lightning parameters: least, usual and greatest as printed, SI. null: no figure is printed. */
export interface FlashRange {
  readonly quantity: string;
  readonly low: number | null;
  readonly usual: { readonly low: number; readonly high: number };
  readonly high: number;
}

/** The page heads its columns in another order than its numbers run in: from low by usual to high. */
export const flashRangesSource: FigureSource = {
  document: 'MIL-HDBK-419A vol. I',
  edition: '1987',
  clause: 'Table 3-1',
  provenance: 'read',
};

/** What is known of flashes; `<0.5 us` and `<1 kA/us`, which are no figures, stand as null. */
export const flashRanges: readonly FlashRange[] = [
  row('strokes', 1, [2, 4], 26),
  row('flashDurationS', 0.03, [0.2], 2),
  row('strokeIntervalS', 3e-3, [40e-3, 60e-3], 0.1),
  row('peakA', 1e3, [10e3, 20e3], 250e3),
  row('flashChargeC', 1, [15, 20], 400),
  row('timeToPeakS', null, [1.5e-6, 2e-6], 30e-6),
  row('steepnessAPerS', null, [20e9], 210e9),
  row('halfValueS', 10e-6, [40e-6, 50e-6], 250e-6),
  row('continuingDurationS', 50e-3, [150e-3], 500e-3),
  row('continuingCurrentA', 30, [150], 1600),
  row('continuingChargeC', 3, [25], 330),
];

function row(quantity: string, low: number | null, usual: readonly number[], high: number): FlashRange {
  return { quantity, low, usual: { low: usual[0]!, high: usual.at(-1)! }, high };
}
