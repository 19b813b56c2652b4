import { type Interval, middle } from '../math/interval.ts';
import type { SoilLayers } from '../soil/layers.ts';

/**
 * Lowest and highest resistivity of any layer. An electrode in layered soil lies between the same electrode in uniform
 * soil of the one and of the other, since no resistance falls when a resistivity rises. null for no layer.
 */
export function resistivityBounds(soil: SoilLayers): Interval | null {
  if (soil.length === 0) return null;
  return {
    low: Math.min(...soil.map(({ resistivityOhmM }) => resistivityOhmM.low)),
    high: Math.max(...soil.map(({ resistivityOhmM }) => resistivityOhmM.high)),
  };
}

/** One resistivity for the layers that a stretch of depth passes, or what has to be known for it. */
export type SoilAlong =
  | { readonly ok: true; readonly ohmM: number | null }
  | { readonly ok: false; readonly missing: string };

/**
 * Resistivity along a stretch of depth: each metre gives off current as the conductance of its own layer allows. An
 * approximation: it leaves out how a layer below or above draws the current on (a 10 ft rod in layers ten to one: up to 20 %
 * off), so that only the bounds are sure. A stretch
 * of no length lies in the layer at that depth. `ohmM` is null where a layer's own figure is open-ended.
 */
export function resistivityAlong(soil: SoilLayers, topM: number, footM: number): SoilAlong {
  let layerTopM = 0;
  const passed: { readonly insideM: number; readonly ohmM: number | null }[] = [];
  for (const [at, { resistivityOhmM, thicknessM }] of soil.entries()) {
    const thickness = thicknessOf(thicknessM, at === soil.length - 1);
    if (thickness === null) return { ok: false, missing: `soil.layers[${at}].thicknessM` };
    const layerFootM = layerTopM + thickness;
    const insideM = Math.min(footM, layerFootM) - Math.max(topM, layerTopM);
    const isAtDepth = topM === footM && topM >= layerTopM && topM < layerFootM;
    if (insideM > 0 || isAtDepth) passed.push({ insideM, ohmM: middle(resistivityOhmM) });
    layerTopM = layerFootM;
    if (isAtDepth || (footM > topM && footM <= layerTopM)) break;
  }
  return { ok: true, ohmM: together(passed) };
}

function together(passed: readonly { readonly insideM: number; readonly ohmM: number | null }[]): number | null {
  const first = passed[0]?.ohmM ?? null;
  if (passed.every(({ ohmM }) => ohmM === first)) return first;
  let [allM, conductance] = [0, 0];
  for (const { insideM, ohmM } of passed) {
    if (ohmM === null) return null;
    allM += insideM;
    conductance += insideM / ohmM;
  }
  return allM / conductance;
}

function thicknessOf(thicknessM: Interval | null, isLast: boolean): number | null {
  if (isLast) return Infinity;
  return thicknessM === null ? null : middle(thicknessM);
}
