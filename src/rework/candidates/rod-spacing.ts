import { readQuantity } from '../../units/quantity.ts';
import { usualRod } from './new-rod.ts';
import type { Scene } from './scene.ts';

/** From here on further apart brings little: nine tenths of what the farthest distance brings. */
const enoughShare = 0.9;

/**
 * How far one more rod is driven from an electrode: the least distance that still pays by the solve in the soil, else twice
 * the length of the rod (NFPA 70, 250.53(A)(3) note, second-hand); never less than either rod is long.
 */
export function rodSpacingM(scene: Scene, beside: string): number {
  const leastM = Math.max(usualRod(scene).lengthM, lengthOf(scene, beside) ?? 0);
  const points = [...(scene.study.earth.spacingGains.find((g) => g.electrode === beside)?.points ?? [])];
  const most = Math.max(0, ...points.map((p) => p.gainShare));
  const pays = points.filter((p) => p.spacingM >= leastM && p.gainShare >= enoughShare * most).map((p) => p.spacingM);
  return pays.length > 0 ? Math.min(...pays) : 2 * leastM;
}

function lengthOf(scene: Scene, electrode: string): number | null {
  const text = scene.part(electrode)?.typed.length;
  if (text === undefined) return null;
  const read = readQuantity(text, 'length', { bareUnit: scene.study.site.units });
  return read.ok && Number.isFinite(read.interval.high) ? read.interval.high : null;
}
