import type { ScaledSoil } from './scaled-soil.ts';
import { scaledSolver } from './scaled-soil.ts';

/**
 * Resistance (ohm) of one upright rod at several lengths (m), its top at a depth; null where it is no rod. Layers show as
 * bends of the curve.
 */
export function depthCurve(
  rod: { readonly radiusM: number; readonly topM: number },
  lengthsM: readonly number[],
  soil: ScaledSoil,
): readonly (number | null)[] {
  return lengthsM.map((lengthM) => {
    const { radiusM, topM } = rod;
    if (!(lengthM > 2 * radiusM)) return null;
    const run = { from: [0, 0, topM], to: [0, 0, topM + lengthM], radiusM, sheath: null } as const;
    const solved = scaledSolver([{ runs: [run] }])(soil);
    return solved.ok ? solved.aloneOhm[0]! : null;
  });
}
