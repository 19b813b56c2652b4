import type { Bounded } from '../study/study.ts';
import type { Interval } from '../units/interval.ts';

/** Sums taken in another order, and figures written and read again, differ by less than this share. */
const sameShare = 1e-6;

export function isSameNumber(a: number | null, b: number | null, share = sameShare): boolean {
  if (a === b) return true;
  if (a === null || b === null || !Number.isFinite(a) || !Number.isFinite(b)) return false;
  return Math.abs(a - b) <= share * Math.max(Math.abs(a), Math.abs(b));
}

/** A range whose open end was written as null is the same range. */
export function isSameRange(a: Interval | null, b: Interval | null, share = sameShare): boolean {
  if (a === null || b === null) return a === b;
  return isSameNumber(open(a.low), open(b.low), share) && isSameNumber(open(a.high), open(b.high), share);
}

export function isSameBounded(a: Bounded | null, b: Bounded | null, share = sameShare): boolean {
  if (a === null || b === null) return a === b;
  return isSameRange(a as Interval, b as Interval, share) && isSameNumber(a.value, b.value, share);
}

const open = (end: number | null): number | null => (end !== null && Number.isFinite(end) ? end : null);
