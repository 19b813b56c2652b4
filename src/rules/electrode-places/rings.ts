import type { ElectrodeFacts, Facts } from '../../facts/facts.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { courseOf, isInside, type Plan, plan } from './plan-distance.ts';

/** Wires in the soil that close on themselves. */
export function ringsOf(electrodes: readonly ElectrodeFacts[]): readonly ElectrodeFacts[] {
  return electrodes.filter(
    (e) => e.part.kind === 'buried wire' && e.part.closed === 'yes' && e.part.owner !== 'utility',
  );
}

/** What serves the supply, or of which nothing is said; a ring round a tower alone is another thing. */
export function isOfBuilding({ part }: ElectrodeFacts, facts: Pick<Facts, 'site' | 'conductors'>): boolean {
  const purposes = purposesOf(part, facts);
  return purposes.size === 0 || purposes.has('service');
}

/** Corners of the buildings that a ring goes round, where both are on the plan. */
export function roundedBy({ part }: ElectrodeFacts, { site }: Pick<Facts, 'site'>): readonly (readonly Plan[])[] {
  const course = courseOf(part);
  const buildings = site.buildings.flatMap((b) => (b.corners === null ? [] : [b.corners.map(plan)]));
  return course.length < 4 ? [] : buildings.filter((corners) => corners.every((c) => isInside(c, course)));
}
