import { formatQuantity } from '../units/format.ts';

interface Ends {
  readonly low: number;
  /** null or Infinity: open. */
  readonly high: number | null;
}

/** Lower than any way into the soil of a station (ohm): a bound from below that small is that of the metal on the way. */
const leastOhm = 0.01;

/** Whether nothing of the soil bounds a resistance from below. A single figure is a reading, however small. */
export function isMetalBelow({ low, high }: Ends): boolean {
  return low < leastOhm && low !== high;
}

/**
 * A resistance to distant soil as a range: `24 to 95 ohm`. A bound from below that is only that of the metal is left out:
 * `up to 411 ohm`; with none from above nothing is known, which is null. Ohms are ohms in both unit systems.
 */
export function earthOhmText(ohm: Ends | null, digits = 3): string | null {
  if (ohm === null) return null;
  const high = ohm.high ?? Number.POSITIVE_INFINITY;
  const inWords = (figure: number | { low: number; high: number }) =>
    formatQuantity(figure, 'resistance', 'si', { digits });
  if (!isMetalBelow(ohm)) return inWords({ low: ohm.low, high });
  return high === Number.POSITIVE_INFINITY ? null : `up to ${inWords(high)}`;
}
