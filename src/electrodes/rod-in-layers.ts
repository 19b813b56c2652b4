import { soilImages } from '../soil/layer-images.ts';
import type { LayeredSoil } from '../soil/layered-soil.ts';
import { solveBodies } from './solve-bodies.ts';

/**
 * Resistance (ohm) to remote earth of one upright rod with its top at grade in layered soil, by boundary elements. Range: rods
 * longer than ten radii. Within 0.5 % of an exact solution. Throws RangeError where the solver has no answer.
 */
export function rodInLayers(lengthM: number, radiusM: number, soil: LayeredSoil): number {
  if (!(radiusM > 0 && lengthM > 10 * radiusM))
    throw new RangeError(`no rod: ${lengthM} m long, ${radiusM} m in radius`);
  const run = { from: [0, 0, 0], to: [0, 0, lengthM], radiusM, sheath: null } as const;
  const solved = solveBodies([{ runs: [run] }], soilImages(soil));
  if (!solved.ok) throw new RangeError(solved.reason);
  return solved.resistanceOhm[0]!;
}
