import type { Interval } from '../math/interval.ts';

/**
 * Range of f when each named figure may be anywhere in its own range, for an f that only rises or only falls with each
 * of them: its extremes are then at corners. A figure open to Infinity is tried at its lower end only, and listed in
 * `open`. f gives null where it does not hold; a corner like that makes the range null.
 */
export function overRange(
  ranges: Readonly<Record<string, Interval>>,
  f: (figures: Readonly<Record<string, number>>) => Interval | null,
): { readonly range: Interval | null; readonly open: readonly string[] } {
  const open = Object.keys(ranges).filter((name) => ranges[name]!.high === Infinity);
  let corners: Readonly<Record<string, number>>[] = [{}];
  for (const [name, { low, high }] of Object.entries(ranges)) {
    const ends = high === Infinity || high === low ? [low] : [low, high];
    corners = corners.flatMap((corner) => ends.map((end) => ({ ...corner, [name]: end })));
  }
  let range: Interval = { low: Infinity, high: 0 };
  for (const corner of corners) {
    const at = f(corner);
    if (at === null) return { range: null, open };
    range = { low: Math.min(range.low, at.low), high: Math.max(range.high, at.high) };
  }
  return { range, open };
}
