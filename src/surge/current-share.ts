import { positive } from './positive.ts';

/** Down conductors in number, a whole one at least. */
function downConductors(count: number): number {
  if (!Number.isInteger(count) || count < 1) throw new RangeError(`${count} down conductors`);
  return count;
}

/**
 * Share of the current in the down conductor that carries most (kc), by their number alone: 1, 0.66, 0.44 for one, two, three
 * and more. IEC 62305-3:2010, simplified approach (1 and 0.44 as in a trade guide, 0.66 from memory).
 */
export function simpleShare(count: number): number {
  const n = downConductors(count);
  if (n === 1) return 1;
  return n === 2 ? 0.66 : 0.44;
}

/** kc of two down conductors of a height, so far apart, metres: (h + c) / (2 h + c). IEC 62305-3:2010 annex C (from memory). */
export function shareOfTwo(heightM: number, spacingM: number): number {
  const [h, c] = [positive(heightM, 'height'), positive(spacingM, 'spacing')];
  return (h + c) / (2 * h + c);
}

/**
 * kc of down conductors of a height, so far apart, that a ring joins at the foot, metres: 1 / (2 n) + 0.1 + 0.2 (c/h)^(1/3), at
 * most 1. IEC 62305-3:2010 annex C (from memory), for three and more.
 */
export function shareInRing(count: number, heightM: number, spacingM: number): number {
  if (downConductors(count) < 3) throw new RangeError(`a ring of ${count} down conductors`);
  const [h, c] = [positive(heightM, 'height'), positive(spacingM, 'spacing')];
  return Math.min(1, 1 / (2 * count) + 0.1 + 0.2 * Math.cbrt(c / h));
}
