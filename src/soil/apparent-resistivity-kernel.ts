/**
 * What layers send back to the surface, K(lambda) = q / (1 - q) with q = down[0] exp(-2 lambda h1) of `reflections`, and its
 * slopes. `logs`: logarithms of n resistivities, then of n - 1 thicknesses (ohm metre, metre). `sent`: K at each wavenumber;
 * `slopes`: for each of the logs dK / dlog at each wavenumber, or null where they are not asked for.
 *
 * The same recursion as `reflections`, without its lists and with derivatives: R = (k + b) / (1 + k b), b = R' exp(-2 lambda h').
 */
export function sentBackByLayers(
  logs: ArrayLike<number>,
  lambdas: Float64Array,
  sent: Float64Array,
  slopes: readonly Float64Array[] | null,
): void {
  const layers = (logs.length + 1) / 2;
  const ohmM = Float64Array.from({ length: layers }, (_, at) => Math.exp(logs[at]!));
  const thickM = Float64Array.from({ length: layers - 1 }, (_, at) => Math.exp(logs[layers + at]!));
  const between = Float64Array.from(thickM, (_, at) => (ohmM[at + 1]! - ohmM[at]!) / (ohmM[at + 1]! + ohmM[at]!));
  const chain: Chain = { thickM, between, reached: new Float64Array(layers), slopeOf: new Float64Array(layers) };
  for (let j = 0; j < lambdas.length; j++) {
    const q = backThroughTop(chain, lambdas[j]!);
    sent[j] = q / (1 - q);
    if (slopes !== null) slopesAt(chain, lambdas[j]!, 1 / ((1 - q) * (1 - q)), slopes, j);
  }
}

interface Chain {
  readonly thickM: Float64Array;
  /** Reflection at each boundary by itself. */
  readonly between: Float64Array;
  /** What comes back up through each layer to its top; 0 from the last. */
  readonly reached: Float64Array;
  /** Of what is reached in a layer, by that of the layer below it. */
  readonly slopeOf: Float64Array;
}

function backThroughTop({ thickM, between, reached, slopeOf }: Chain, lambda: number): number {
  let below = 0;
  for (let at = between.length - 1; at >= 0; at--) {
    const k = between[at]!;
    const fade = Math.exp(-2 * lambda * thickM[at]!);
    const one = 1 + k * below;
    slopeOf[at] = (fade * (1 - k * k)) / (one * one);
    below = (fade * (k + below)) / one;
    reached[at] = below;
  }
  return below;
}

/** Along the chain from the top down; `outer`: dK by what comes back through the layer at hand. */
function slopesAt(chain: Chain, lambda: number, top: number, slopes: readonly Float64Array[], j: number): void {
  const { thickM, reached, slopeOf } = chain;
  const boundaries = thickM.length;
  for (let at = 0; at <= boundaries; at++) slopes[at]![j] = 0;
  let outer = top;
  for (let at = 0; at < boundaries; at++) {
    const below = at + 1 < boundaries ? reached[at + 1]! : 0;
    // dR/dk = (1 - b^2) / (1 + k b)^2, dk/dlog = +-(1 - k^2) / 2
    const byLog = (outer * slopeOf[at]! * (1 - below * below)) / 2;
    slopes[at]![j] = slopes[at]![j]! - byLog;
    slopes[at + 1]![j] = byLog;
    slopes[boundaries + 1 + at]![j] = -2 * lambda * thickM[at]! * outer * reached[at]!;
    outer *= slopeOf[at]!;
  }
}
