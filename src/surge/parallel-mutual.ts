/**
 * Double integral of 1 / sqrt((s - t)^2 + d^2) along two parallel pieces, metres: middles `shiftM` apart along both, lines
 * `apartM` apart. Exact to rounding; with itself (no shift, apart by its own radius) it is that of a piece on its own. Far
 * pieces lose digits as the square of distance over length.
 *
 *     f(u) = u asinh(u / d) - sqrt(u^2 + d^2), second integral of 1 / sqrt(u^2 + d^2), taken at the four pairs of ends
 *
 * Source: F. W. Grover, Inductance Calculations (1946), chapter 6, parallel filaments; E. B. Rosa, Bull. Bur. Stand. 4 (1908)
 * for equal ones (from memory).
 */
export function parallelMutual(shiftM: number, apartM: number, lengthAM: number, lengthBM: number): number {
  const half = (lengthAM + lengthBM) / 2;
  const less = (lengthAM - lengthBM) / 2;
  const middle = secondIntegral(shiftM + less, apartM) + secondIntegral(shiftM - less, apartM);
  return secondIntegral(shiftM + half, apartM) + secondIntegral(shiftM - half, apartM) - middle;
}

/** With asinh written out as a logarithm, which is the faster. */
function secondIntegral(u: number, d: number): number {
  const far = Math.sqrt(u * u + d * d);
  const size = Math.abs(u);
  return size * Math.log((size + far) / d) - far;
}
