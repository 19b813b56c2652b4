import type { Run } from './body.ts';
import type { Section } from './section.ts';

/** Arms from the origin in equally spread directions, the first to the east. */
export function starRuns(count: number, armLengthM: number, { depthM, radiusM, sheath }: Section): readonly Run[] {
  return Array.from({ length: count }, (_, arm): Run => {
    const angle = (2 * Math.PI * arm) / count;
    return {
      from: [0, 0, depthM],
      to: [armLengthM * Math.cos(angle), armLengthM * Math.sin(angle), depthM],
      radiusM,
      sheath,
    };
  });
}
