import { ask, below } from '../reading/report.ts';
import type { Checked } from './checked.ts';

/** 100 ft. Sectional rods are driven deep, but a figure beyond this is far more often one in another unit. */
const longestRodM = 30.48;
const driven: readonly string[] = ['rod', 'rods'];

/** Asks about a driven rod of more than 100 ft. */
export function askRods({ typed }: Checked): void {
  for (const { kind, values, typed: texts, spot, fieldAt } of typed.parts.electrodes) {
    const { length } = values;
    if (!driven.includes(kind) || length === null) continue;
    const over = length.high === Infinity ? length.low >= longestRodM : length.low > longestRodM;
    if (!over) continue;
    ask(below(spot, 'length'), fieldAt.get('length')!, 'rod-over-100-ft', { text: texts.length ?? '' });
  }
}
