/** The largest magnitude of a figure over time, with its sign and its time. */
export interface Peak {
  readonly value: number;
  readonly atS: number;
}

/** Refined between samples by the polynomial through the largest and two on either side. */
export function peakOf(timesS: Float64Array, values: Float64Array): Peak {
  let at = 0;
  for (let i = 1; i < values.length; i++) if (Math.abs(values[i]!) > Math.abs(values[at]!)) at = i;
  const found = { value: values[at] ?? 0, atS: timesS[at] ?? 0 };
  if (at < 2 || at > values.length - 3) return found;
  const times = timesS.subarray(at - 2, at + 3);
  const differences = dividedDifferences(times, values.subarray(at - 2, at + 3));
  const atS = extremum(differences, times);
  const { value } = polynomial(differences, times, atS);
  return Math.abs(value) > Math.abs(found.value) ? { value, atS } : found;
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

/** Where the slope is zero beside the middle point, by Newton's method within its two neighbours. */
function extremum(differences: Float64Array, times: Float64Array): number {
  const [low, high] = [times[1]!, times[3]!];
  let time = times[2]!;
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
