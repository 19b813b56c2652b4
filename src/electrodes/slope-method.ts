/**
 * Slope method: readings with the potential probe at 20, 40 and 60 % of the way to the current probe tell where on that
 * line the true resistance is read, even where the electrical centre of a large electrode is not known.
 *
 * mu = (R60 - R40) / (R40 - R20). With the centre at X from where distances begin (D = 1),
 * f(p) = -1 / (p + X) - 1 / (1 + X) + 1 / (1 - p) is the reading at p but for a constant and a factor, and the true one is
 * read at P / D = 0.618 - 0.382 X.
 *
 * Source: G. F. Tagg's slope method; table of an earth-tester handbook, page 19 (read), which this reproduces to 0.001.
 * A finite-element revision of 2026 (abstract read) finds the table far off on large square grids; it is good for electrodes
 * that are small beside D.
 */

/** Where the table begins and ends. */
export const slopeLimits = { low: 0.4, high: 1.59 } as const;

export type SlopeAnswer =
  | { readonly ok: true; readonly slope: number; readonly probeShare: number }
  /**
   * no-rise: the readings do not rise from the electrode outward. slope-low: outside the table below. slope-high: outside it
   * above, the current probe has to stand farther away.
   */
  | { readonly ok: false; readonly slope: number | null; readonly reason: 'no-rise' | 'slope-low' | 'slope-high' };

/** Where to put the potential probe, as a share of the way to the current probe, from the three readings (ohm). */
export function slopeProbe(at20Ohm: number, at40Ohm: number, at60Ohm: number): SlopeAnswer {
  if (!(at40Ohm > at20Ohm && at60Ohm > at40Ohm)) return { ok: false, slope: null, reason: 'no-rise' };
  return probeOfSlope((at60Ohm - at40Ohm) / (at40Ohm - at20Ohm));
}

/** The same from the slope itself. */
export function probeOfSlope(slope: number): SlopeAnswer {
  // its own ends are inside, rounding of the readings' quotient included
  if (!(slope >= slopeLimits.low - 1e-9)) return { ok: false, slope, reason: 'slope-low' };
  if (slope > slopeLimits.high + 1e-9) return { ok: false, slope, reason: 'slope-high' };
  const golden = (Math.sqrt(5) - 1) / 2;
  return { ok: true, slope, probeShare: golden - (1 - golden) * centreOf(slope) };
}

/** X of a slope, by halving: the slope only rises with X. */
function centreOf(slope: number): number {
  // the centre may lie a little before the point that distances begin at (negative)
  let [low, high] = [-0.19, 2];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (slopeOf(middle) < slope) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function slopeOf(centre: number): number {
  const reading = (p: number): number => 1 / (1 - p) - 1 / (p + centre);
  return (reading(0.6) - reading(0.4)) / (reading(0.4) - reading(0.2));
}
