import type { Conductor, Line, PointRef } from '../site/site.ts';
import { type Meeting, meetingsOf } from './joint-id.ts';
import { isJointOpen } from './joint-open.ts';
import { courseOf, stopName } from './line-course.ts';
import { lineMakeUp } from './line-make-up.ts';
import type { Opening } from './opening.ts';
import type { SiteIndex } from './site-index.ts';

/** A place that a line or conductor comes to. */
export interface Station {
  /** A part, a plug, `street` or `unknown`. */
  readonly name: string;
  /** Whether something is there that the run hangs on; not so at a plug, a splice or a part that is gone. */
  readonly holds: boolean;
  /** Whether the run is parted from the place on the side that comes first in its path, and on the other. */
  readonly openBefore: boolean;
  readonly openAfter: boolean;
}

/** A line or conductor as the places that it comes to, in order. */
export interface WireRun {
  readonly id: string;
  readonly is: 'line' | 'conductor';
  readonly stations: readonly Station[];
}

/** Every line that has metal in it and every conductor that is there and not broken. Unknown counts as there. */
export function wireRuns(index: SiteIndex, openings: readonly Opening[]): readonly WireRun[] {
  const lines = index.site.lines.filter((line) => line.present !== 'no' && hasMetal(index, line));
  const conductors = index.site.conductors.filter((c) => c.present !== 'no' && c.condition !== 'open');
  return [...lines.map((line) => runOfLine(index, line, openings)), ...conductors.map((c) => runOfWire(index, c))];
}

function hasMetal(index: SiteIndex, line: Line): boolean {
  const { shield, cores, protective } = lineMakeUp(index, line);
  return shield || cores !== 'no' || protective !== 'no';
}

function runOfLine(index: SiteIndex, line: Line, openings: readonly Opening[]): WireRun {
  const stations = courseOf(line, openings).stops.map(({ stop, openBefore, openAfter }): Station => {
    const holds = stop.is === 'part' || stop.is === 'bond' ? isThere(index, stop.at) : stop.is !== 'plug';
    return { name: stopName(stop), holds, openBefore: openBefore !== null, openAfter: openAfter !== null };
  });
  return { id: line.id, is: 'line', stations };
}

function runOfWire(index: SiteIndex, c: Conductor): WireRun {
  const { from, passes, splices, to } = meetingsOf(c);
  const station = (meeting: Meeting): Station => {
    const open = isJointOpen(index, meeting);
    const holds = meeting.at !== null && !open && isThere(index, meeting.at);
    return { name: meeting.at?.part ?? 'unknown', holds, openBefore: open, openAfter: open };
  };
  // A wire goes on whole past a clamp that is open.
  const passed = (meeting: Meeting): Station => ({ ...station(meeting), openBefore: false, openAfter: false });
  return {
    id: c.id,
    is: 'conductor',
    stations: [station(from), ...passes.map(passed), ...splices.map(station), station(to)],
  };
}

/** What nobody knows is perhaps there. */
function isThere({ parts, guys }: SiteIndex, { part }: PointRef): boolean {
  if (part === null || guys.has(part)) return true;
  const found = parts.get(part);
  return found !== undefined && found.present !== 'no';
}
