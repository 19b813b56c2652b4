import type { Run } from './body.ts';
import type { Figures } from './closed-form.ts';

/** A rod or casing from its upper end at the origin; one at an angle leads to the east. No angle: upright. */
export function rodRuns({ lengthM, diameterM, topM, angleDeg = 0 }: Figures): readonly Run[] {
  const angle = (Math.abs(angleDeg) * Math.PI) / 180;
  const foot = topM! + lengthM! * Math.cos(angle);
  return [{ from: [0, 0, topM!], to: [lengthM! * Math.sin(angle), 0, foot], radiusM: diameterM! / 2, sheath: null }];
}
