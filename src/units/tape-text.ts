import type { Interval } from './interval.ts';
import { footM, inchM } from './unit-table.ts';

/**
 * A length as one would measure it with a tape: whole inches below 3 ft, half feet below 20 ft, whole feet beyond; centimetres
 * below a metre, tenths of a metre beyond. Both systems, the owner's first: `30 in (76 cm)`, `58 to 64 ft (17.7 to 19.5 m)`,
 * `over 100 ft (30.5 m)`. null for null and for a range of which nothing is known.
 */
export function tapeText(length: Interval | null, first: 'us' | 'si'): string | null {
  if (length === null || (length.high === Infinity && length.low <= 0)) return null;
  const [us, si] = [inUnit(length, usUnit), inUnit(length, siUnit)];
  return first === 'us' ? `${us} (${withoutBound(si)})` : `${si} (${withoutBound(us)})`;
}

interface TapeUnit {
  readonly name: string;
  readonly lengthM: number;
  /** Fineness, in the unit. */
  readonly step: number;
}

function usUnit(lengthM: number): TapeUnit {
  if (lengthM < 2.99 * footM) return { name: 'in', lengthM: inchM, step: 1 };
  return { name: 'ft', lengthM: footM, step: lengthM < 20 * footM ? 0.5 : 1 };
}

function siUnit(lengthM: number): TapeUnit {
  return lengthM < 0.995 ? { name: 'cm', lengthM: 0.01, step: 1 } : { name: 'm', lengthM: 1, step: 0.1 };
}

function inUnit({ low, high }: Interval, unitOf: (lengthM: number) => TapeUnit): string {
  const unit = unitOf(high === Infinity ? low : high);
  const figure = (lengthM: number) =>
    String(Number((Math.round(lengthM / unit.lengthM / unit.step) * unit.step).toFixed(1)));
  if (high === Infinity) return `over ${figure(low)} ${unit.name}`;
  const [from, to] = [figure(low), figure(high)];
  return from === to ? `${to} ${unit.name}` : `${from} to ${to} ${unit.name}`;
}

function withoutBound(text: string): string {
  return text.replace(/^over /, '');
}
