import { rowStart } from '../math/cholesky-update.ts';
import { factorCholesky } from '../math/dense.ts';

/**
 * Resistance (ohm) of the first 1, 2, ... segments of a matrix joined into one body, as if the rest of them were not there;
 * null where two coincide. The factor of a leading part of a matrix is the leading part of its factor, so that with L y = 1
 * the conductance of the first k is the sum of the first k squares of y.
 */
export function leadingOhm(matrix: Float64Array, count: number): Float64Array | null {
  const factored = factorCholesky(matrix, count);
  if (!factored.ok) return null;
  const lower = factored.factor;
  const y = new Float64Array(count);
  const ohm = new Float64Array(count);
  let siemens = 0;
  for (let row = 0; row < count; row++) {
    const start = rowStart(row);
    let rest = 1;
    for (let column = 0; column < row; column++) rest -= lower[start + column]! * y[column]!;
    y[row] = rest / lower[start + row]!;
    siemens += y[row]! * y[row]!;
    ohm[row] = 1 / siemens;
  }
  return ohm;
}
