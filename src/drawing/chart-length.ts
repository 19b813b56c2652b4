import { footM } from '../units/unit-table.ts';
import type { Speech } from '../words/say.ts';

/** The unit in which the lengths of a chart are given: the site's own. */
export interface ChartLength {
  readonly name: 'ft' | 'm';
  readonly of: (lengthM: number) => number;
}

export function chartLength(speech: Speech): ChartLength {
  return speech.unitsFirst === 'us' ? { name: 'ft', of: (m) => m / footM } : { name: 'm', of: (m) => m };
}
