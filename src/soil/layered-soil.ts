/** Soil of level layers from the surface down, each of one known resistivity: what a potential is worked out in. */
export interface LayeredSoil {
  /** One per layer. */
  readonly resistivityOhmM: readonly number[];
  /** One per layer but the last, which goes down without end. */
  readonly thicknessM: readonly number[];
}

/** Least and greatest resistivity that a potential is worked out for, ohm metre: beyond sea water and dry rock. */
export const resistivityLimitsOhmM = { low: 1e-3, high: 1e8 } as const;
/** Greatest resistivity over the least of one soil: beyond, what is left where layers cancel is lost in the fit of images. */
export const greatestContrast = 1e6;
/** Thinnest layer, metres, and the most layers. */
export const thinnestLayerM = 1e-3;
export const mostLayers = 12;

/**
 * Layers as a soil, neighbours of the same resistivity taken together. Throws RangeError, in words for a programmer, for no
 * layer, more than twelve, a thickness under a millimetre, a resistivity outside 1e-3 to 1e8 ohm metre or resistivities
 * more than 1e6 times apart.
 */
export function layeredSoil(resistivityOhmM: readonly number[], thicknessM: readonly number[] = []): LayeredSoil {
  if (resistivityOhmM.length === 0) throw new RangeError('no layer of soil');
  if (thicknessM.length !== resistivityOhmM.length - 1) throw new RangeError('one thickness per layer but the last');
  for (const ohmM of resistivityOhmM) {
    const isUsable = ohmM >= resistivityLimitsOhmM.low && ohmM <= resistivityLimitsOhmM.high;
    if (!isUsable) throw new RangeError(`${ohmM} ohm m is no resistivity of soil`);
  }
  const contrast = Math.max(...resistivityOhmM) / Math.min(...resistivityOhmM);
  // a rounding more is no more
  if (contrast > greatestContrast * (1 + 1e-12)) throw new RangeError(`resistivities ${contrast} times apart`);
  for (const thickM of thicknessM) {
    if (!(thickM >= thinnestLayerM && Number.isFinite(thickM))) throw new RangeError(`${thickM} m is no layer`);
  }
  const merged = withoutRepeats(resistivityOhmM, thicknessM);
  if (merged.resistivityOhmM.length > mostLayers) throw new RangeError(`more than ${mostLayers} layers`);
  return merged;
}

/** Depth of each boundary, from the surface down. */
export function boundariesM({ thicknessM }: LayeredSoil): readonly number[] {
  let depthM = 0;
  return thicknessM.map((thickM) => (depthM += thickM));
}

/** Layer at a depth, from 0; a boundary belongs to the layer above it. */
export function layerAt(soil: LayeredSoil, depthM: number): number {
  let footM = 0;
  for (const [layer, thickM] of soil.thicknessM.entries()) {
    footM += thickM;
    if (depthM <= footM) return layer;
  }
  return soil.thicknessM.length;
}

function withoutRepeats(resistivityOhmM: readonly number[], thicknessM: readonly number[]): LayeredSoil {
  const ohmM: number[] = [];
  const thickM: number[] = [];
  for (const [layer, here] of resistivityOhmM.entries()) {
    if (here === ohmM.at(-1)) thickM.push(thickM.pop()! + (thicknessM[layer] ?? Infinity));
    else {
      ohmM.push(here);
      thickM.push(thicknessM[layer] ?? Infinity);
    }
  }
  return { resistivityOhmM: ohmM, thicknessM: thickM.slice(0, -1) };
}
