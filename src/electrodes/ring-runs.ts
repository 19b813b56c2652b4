import type { Run } from './body.ts';
import { routeRuns } from './route-runs.ts';
import type { Section } from './section.ts';

/** Chords of a ring. */
const chords = 48;

/**
 * A ring as a polygon of the same length all the way round: what the wire is long counts, so that its resistance is nearer
 * to the circle's than that of chords between points of the circle.
 */
export function ringRuns(lengthM: number, section: Section): readonly Run[] {
  const cornerM = lengthM / chords / (2 * Math.sin(Math.PI / chords));
  const corners = Array.from({ length: chords }, (_, at) => {
    const angle = (2 * Math.PI * at) / chords;
    return [cornerM * Math.cos(angle), cornerM * Math.sin(angle)] as const;
  });
  return routeRuns(corners, section, true);
}
