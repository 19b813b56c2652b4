import type { LineConductor, LineFacts } from './bonding.ts';
import { type Course, courseOf } from './line-course.ts';
import { lineMakeUp } from './line-make-up.ts';
import type { Opening } from './opening.ts';
import type { SiteIndex } from './site-index.ts';

/** What each line's conductors meet: where bonded, protected, drained; and the walls that they cross. */
export function lineFacts(index: SiteIndex, openings: readonly Opening[]): readonly LineFacts[] {
  const lines = index.site.lines.filter((line) => line.present !== 'no');
  return [...lines]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((line) => {
      const course = courseOf(line, openings);
      const make = lineMakeUp(index, line);
      const core: LineConductor = {
        which: 'core',
        count: make.count,
        bondedAt: [],
        protectedBy: arrestersOn(index, course),
        drainedBy: [],
        unprotected: arrestersOn(index, course).length > 0 ? 0 : make.count,
      };
      return { id: line.id, kind: line.kind, conductors: [core], crossings: [] };
    });
}

function arrestersOn(index: SiteIndex, course: Course): readonly string[] {
  const ids = course.stops.flatMap(({ stop }) => (stop.is === 'part' && stop.at.part !== null ? [stop.at.part] : []));
  return ids.filter((id) => index.parts.get(id)?.section === 'arresters');
}
