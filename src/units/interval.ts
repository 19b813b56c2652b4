/**
 * A range of a figure in SI units, low <= high. A figure known exactly has low === high; `over 100 ft` has high Infinity;
 * `under 5 ohm` has low 0. The operations give the range of the result when each input may be anything in its own range
 * (interval arithmetic); a figure that stands twice in a formula makes the result wider than it need be, never narrower.
 */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The range between two figures, whichever way round they come. NaN is refused. */
export function interval(a: number, b: number): Interval {
  if (Number.isNaN(a) || Number.isNaN(b)) throw new RangeError('an interval needs two numbers');
  return a <= b ? { low: a, high: b } : { low: b, high: a };
}

/** A figure known exactly. */
export function exact(value: number): Interval {
  return interval(value, value);
}

/** Whether the range is a single figure. */
export function isExact(i: Interval): boolean {
  return i.low === i.high;
}

/** k times the range; a negative k turns it round. 0 times an open end is 0. */
export function scale(i: Interval, k: number): Interval {
  return interval(times(i.low, k), times(i.high, k));
}

export function add(a: Interval, b: Interval): Interval {
  return { low: a.low + b.low, high: a.high + b.high };
}

export function subtract(a: Interval, b: Interval): Interval {
  return { low: a.low - b.high, high: a.high - b.low };
}

/** Sum of the ranges; of none: exactly 0. null as soon as one of them is unknown. */
export function sum(all: readonly (Interval | null)[]): Interval | null {
  let total = exact(0);
  for (const i of all) {
    if (i === null) return null;
    total = add(total, i);
  }
  return total;
}

export function mul(a: Interval, b: Interval): Interval {
  const ends = [times(a.low, b.low), times(a.low, b.high), times(a.high, b.low), times(a.high, b.high)];
  return { low: Math.min(...ends), high: Math.max(...ends) };
}

/**
 * a / b for a divisor that does not change sign. A divisor that may be 0 leaves the side it divides open (Infinity);
 * one that may be negative as well as positive is refused (RangeError).
 */
export function divide(a: Interval, b: Interval): Interval {
  if (b.low < 0 && b.high > 0) throw new RangeError('division by a range that changes sign');
  if (b.high <= 0 && b.low < 0) return divide(scale(a, -1), scale(b, -1));
  return mul(a, { low: 1 / b.high, high: b.low === 0 ? Infinity : 1 / b.low });
}

/** Range of the greater of two figures. */
export function max(a: Interval, b: Interval): Interval {
  return { low: Math.max(a.low, b.low), high: Math.max(a.high, b.high) };
}

/** Range of the lesser of two figures. */
export function min(a: Interval, b: Interval): Interval {
  return { low: Math.min(a.low, b.low), high: Math.min(a.high, b.high) };
}

/** The least range that holds both. */
export function hull(a: Interval, b: Interval): Interval {
  return { low: Math.min(a.low, b.low), high: Math.max(a.high, b.high) };
}

/** Whether a figure lies in the range, ends included. */
export function contains(i: Interval, value: number): boolean {
  return i.low <= value && value <= i.high;
}

/** Range of f over i for an f that only rises, or only falls, over i. f is asked at both ends, Infinity included. */
export function mapMonotone(i: Interval, f: (value: number) => number): Interval {
  return interval(f(i.low), f(i.high));
}

/**
 * Whether the figure is at least the limit (or at most it): 'unknown' where the limit lies inside the range, so that
 * nobody can tell.
 */
export function isAtLeast(i: Interval, limit: number): 'yes' | 'no' | 'unknown' {
  if (i.low >= limit) return 'yes';
  return i.high < limit ? 'no' : 'unknown';
}

export function isAtMost(i: Interval, limit: number): 'yes' | 'no' | 'unknown' {
  if (i.high <= limit) return 'yes';
  return i.low > limit ? 'no' : 'unknown';
}

/**
 * One figure that stands for the range where a single one has to be drawn or computed: geometric mean when both ends are
 * above 0, else the arithmetic mean; null when an end is open.
 */
export function middle(i: Interval): number | null {
  if (!Number.isFinite(i.low) || !Number.isFinite(i.high)) return null;
  if (i.low === i.high) return i.low;
  return i.low > 0 ? Math.sqrt(i.low) * Math.sqrt(i.high) : (i.low + i.high) / 2;
}

/** Product in which 0 wins over Infinity: nothing of an unbounded figure is nothing. */
function times(a: number, b: number): number {
  return a === 0 || b === 0 ? 0 : a * b;
}
