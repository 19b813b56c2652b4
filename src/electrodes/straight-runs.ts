import type { Run } from './body.ts';
import type { Section } from './section.ts';

/** A wire, pipe, strap or footing from west to east, its middle at the origin. */
export function straightRuns(lengthM: number, { depthM, radiusM, sheath }: Section): readonly Run[] {
  return [{ from: [-lengthM / 2, 0, depthM], to: [lengthM / 2, 0, depthM], radiusM, sheath }];
}
