/**
 * Potential of a point (volt per ampere) in two layers by its endless series of images, summed until nothing is left.
 *
 * Source: E. D. Sunde, Earth Conduction Effects in Transmission Systems (1949), from memory, in the form that a direct
 * solution of the layer conditions confirmed to six figures.
 */
export function twoLayerSeries(
  [upperOhmM, lowerOhmM]: readonly [number, number],
  boundaryM: number,
  sourceM: number,
  depthM: number,
  distanceM: number,
): number {
  const k = (lowerOhmM - upperOhmM) / (lowerOhmM + upperOhmM);
  const terms = k === 0 ? 1 : Math.ceil(Math.log(1e-15) / Math.log(Math.abs(k))) + 2;
  const near = (upM: number): number => 1 / Math.hypot(distanceM, upM);
  const [high, low] = [Math.min(sourceM, depthM), Math.max(sourceM, depthM)];
  const sum = (from: number, term: (shiftM: number) => number): number => {
    let total = 0;
    for (let m = terms; m >= from; m--) total += k ** m * term(2 * m * boundaryM);
    return total;
  };
  if (low <= boundaryM) {
    const direct = near(low - high) + near(low + high);
    const rest = sum(
      1,
      (s) => near(s + low + high) + near(s - low - high) + near(s + low - high) + near(s - low + high),
    );
    return (upperOhmM / (4 * Math.PI)) * (direct + rest);
  }
  if (high <= boundaryM) {
    const all = sum(0, (s) => near(s + low - high) + near(s + low + high));
    return ((upperOhmM * (1 + k)) / (4 * Math.PI)) * all;
  }
  const back = near(low - high) - k * near(low + high - 2 * boundaryM);
  return (lowerOhmM / (4 * Math.PI)) * (back + (1 - k * k) * sum(0, (s) => near(low + high + s)));
}
