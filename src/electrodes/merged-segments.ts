import type { Segments } from './segments.ts';

/**
 * An influence matrix with neighbours of the same run and layer taken together two by two: the current of both spread
 * evenly over both. Averages of averages, so that nothing is worked out anew.
 */
export function merged(
  matrix: Float64Array,
  { count, run, layer, body, lengthM }: Segments,
): { readonly matrix: Float64Array; readonly body: Int32Array } {
  const parts: { readonly at: number; readonly share: number }[][] = [];
  for (let i = 0; i < count; i++) {
    const isPair = i + 1 < count && run[i] === run[i + 1] && layer[i] === layer[i + 1];
    const whole = lengthM[i]! + (isPair ? lengthM[i + 1]! : 0);
    const pair = [{ at: i, share: lengthM[i]! / whole }];
    if (isPair) {
      pair.push({ at: i + 1, share: lengthM[i + 1]! / whole });
      i++;
    }
    parts.push(pair);
  }
  const size = parts.length;
  const coarse = new Float64Array(size * size);
  parts.forEach((rows, row) => {
    parts.forEach((columns, column) => {
      let sum = 0;
      for (const a of rows) for (const b of columns) sum += a.share * b.share * matrix[a.at * count + b.at]!;
      coarse[row * size + column] = sum;
    });
  });
  return { matrix: coarse, body: Int32Array.from(parts, (pair) => body[pair[0]!.at]!) };
}
