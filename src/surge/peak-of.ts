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
  const differences = dividedDifferences(timesS.subarray(at - 2, at + 3), values.subarray(at - 2, at + 3));
  const origin = timesS.subarray(at - 2, at + 3);
  const size = (time: number) => Math.abs(polynomial(differences, origin, time));
  let [low, high] = [timesS[at - 1]!, timesS[at + 1]!];
  for (let turn = 0; turn < 60; turn++) {
    const third = (high - low) / 3;
    if (size(low + third) < size(high - third)) low += third;
    else high -= third;
  }
  const atS = (low + high) / 2;
  return size(atS) > Math.abs(found.value) ? { value: polynomial(differences, origin, atS), atS } : found;
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

function polynomial(differences: Float64Array, times: Float64Array, time: number): number {
  let sum = differences.at(-1)!;
  for (let i = differences.length - 2; i >= 0; i--) sum = sum * (time - times[i]!) + differences[i]!;
  return sum;
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
