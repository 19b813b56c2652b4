import { formatQuantity } from '../../units/format.ts';
import type { Interval } from '../../units/interval.ts';
import type { Site } from '../site.ts';

/** A length in the owner's unit and the other. */
export function sayLength(lengthM: number | Interval, { header }: Site): string {
  return formatQuantity(lengthM, 'length', header.units === 'ft' ? 'both-us-first' : 'both-si-first') ?? 'unknown';
}
