/** The largest magnitude of a figure over time, with its sign and its time. */
export interface Peak {
  readonly value: number;
  readonly atS: number;
}

/**
 * Refined between samples by the polynomial through the largest and three on either side (two where there are no more); a peak
 * that breaks off, as when a gap fires, is its largest sample.
 */
export function peakOf(timesS: Float64Array, values: Float64Array): Peak {
  let at = 0;
  for (let i = 1; i < values.length; i++) if (Math.abs(values[i]!) > Math.abs(values[at]!)) at = i;
  const found = { value: values[at] ?? 0, atS: timesS[at] ?? 0 };
  if (at < 2 || at > values.length - 3 || !isRound(timesS, values, at)) return found;
  const reach = at < 3 || at > values.length - 4 ? 2 : 3;
  const times = timesS.subarray(at - reach, at + reach + 1);
  const differences = dividedDifferences(times, values.subarray(at - reach, at + reach + 1));
  const atS = extremum(differences, times);
  const { value } = polynomial(differences, times, atS);
  return Math.abs(value) > Math.abs(found.value) ? { value, atS } : found;
}

/** Most that the bends about a sample may differ, as a factor. Ours: a peak that the samples resolve stays below three. */
const mostBend = 8;

/** Whether the curve bends alike before, at and after a sample. */
function isRound(times: Float64Array, values: Float64Array, at: number): boolean {
  const [before, middle, after] = [at - 1, at, at + 1].map((i) => {
    const rise = (values[i + 1]! - values[i]!) / (times[i + 1]! - times[i]!);
    const last = (values[i]! - values[i - 1]!) / (times[i]! - times[i - 1]!);
    return (rise - last) / (times[i + 1]! - times[i - 1]!);
  }) as [number, number, number];
  const isAlike = (bend: number) => bend * middle > 0 && bend / middle < mostBend && middle / bend < mostBend;
  return isAlike(before) && isAlike(after);
}

/** Newton's coefficients of the polynomial through points. */
function dividedDifferences(times: Float64Array, values: Float64Array): Float64Array {
  const differences = Float64Array.from(values);
  for (let order = 1; order < times.length; order++) {
    for (let i = times.length - 1; i >= order; i--) {
      differences[i] = (differences[i]! - differences[i - 1]!) / (times[i]! - times[i - order]!);
    }
  }
  return differences;
}

/** Where the slope is zero about the middle point, by Newton's method within its two neighbours. */
function extremum(differences: Float64Array, times: Float64Array): number {
  const middle = (times.length - 1) / 2;
  const [low, high] = [times[middle - 1]!, times[middle + 1]!];
  let time = times[middle]!;
  for (let turn = 0; turn < 20; turn++) {
    const { slope, bend } = polynomial(differences, times, time);
    if (bend === 0) break;
    const next = Math.min(high, Math.max(low, time - slope / bend));
    if (Math.abs(next - time) <= 1e-9 * (high - low)) return next;
    time = next;
  }
  return time;
}

/** Value, slope and second derivative by Horner's rule. */
function polynomial(differences: Float64Array, times: Float64Array, time: number) {
  let [value, slope, half] = [differences[differences.length - 1]!, 0, 0];
  for (let i = differences.length - 2; i >= 0; i--) {
    const away = time - times[i]!;
    half = half * away + slope;
    slope = slope * away + value;
    value = value * away + differences[i]!;
  }
  return { value, slope, bend: 2 * half };
}

/** Integral of the square over time by straight lines from sample to sample. */
export function actionIntegral(timesS: Float64Array, values: Float64Array): number {
  let sum = 0;
  for (let i = 1; i < values.length; i++) {
    const [a, b] = [values[i - 1]!, values[i]!];
    sum += ((timesS[i]! - timesS[i - 1]!) * (a * a + a * b + b * b)) / 3;
  }
  return sum;
}
