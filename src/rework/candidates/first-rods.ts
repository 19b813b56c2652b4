import { type Driven, driveRod, usualRod } from './new-rod.ts';
import { rodSpot } from './rod-spot.ts';
import type { Scene } from './scene.ts';
import { isUs } from './usual-wire.ts';
import type { Spot } from './way-to-lay.ts';

/**
 * The first electrode of something that has none: a rod at a distance from it; in the United States a second one twice its
 * length away, since nobody has measured the first (NFPA 70, 250.53(A)(2), second-hand).
 */
export function firstRods(
  scene: Scene,
  to: string,
  subject: string,
  spot: Spot | null,
  besideM: number | null,
): readonly Driven[] {
  const first = scene.newId(`rod-${subject}`);
  const driven = driveRod(scene, { id: first, to, spot, spacingM: besideM });
  if (!isUs(scene.study.site.region)) return [driven];
  const spacingM = 2 * usualRod(scene).lengthM;
  const second = spot === null ? null : rodSpot(scene, spot, spacingM, [spot]);
  if (spot !== null && second === null) return [driven];
  const id = scene.newId(`rod-${subject}-2`);
  return [driven, driveRod(scene, { id, to: first, spot: second, spacingM, beside: spot })];
}
