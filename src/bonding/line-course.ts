import type { Line, Stop } from '../site/site.ts';
import type { Interval } from '../units/interval.ts';
import type { Opening } from './opening.ts';

/** A stop at which something electrical can happen (bends left out), and on which of its sides the line is taken off. */
export interface CourseStop {
  /** Place in the path as typed. */
  readonly index: number;
  readonly stop: Exclude<Stop, { readonly is: 'bend' }>;
  readonly openBefore: Opening | null;
  readonly openAfter: Opening | null;
}

export interface Course {
  readonly stops: readonly CourseStop[];
  /** Between each stop and the next. */
  readonly lengthsM: readonly (Interval | null)[];
}

/** The stops of a line in order, with the openings of the state. */
export function courseOf(line: Line, openings: readonly Opening[]): Course {
  const named = line.path.flatMap((stop, index) => (stop.is === 'bend' ? [] : [{ index, stop }]));
  const stops = named.map(({ index, stop }): CourseStop => {
    const open = openings.filter((o) => isAt(o, line, stop));
    // A plug has no sides: pulling it parts the two.
    const opens = (side: 'before' | 'after') =>
      open.find((o) => stop.is === 'plug' || (o.side ?? side) === side) ?? null;
    return { index, stop, openBefore: opens('before'), openAfter: opens('after') };
  });
  return { stops, lengthsM: pieceLengths(line, named.length - 1) };
}

function isAt(opening: Opening, line: Line, stop: Exclude<Stop, { readonly is: 'bend' }>): boolean {
  if (stop.is === 'plug') return opening.at === stop.id;
  const [id, ...rest] = opening.at.split(':');
  if (id !== line.id) return false;
  const at = rest.join(':');
  if (stop.is === 'street' || stop.is === 'unknown') return at === stop.is;
  return at === stop.at.part || at === stop.at.text;
}

function pieceLengths(line: Line, pieces: number): readonly (Interval | null)[] {
  if (line.lengthsM.length === pieces && pieces > 0) return line.lengthsM;
  const each = pieces === 1 ? line.lengthM : null;
  return Array.from({ length: Math.max(0, pieces) }, () => each);
}

/** What a stop is called: the part, the plug, `street` or `unknown`. */
export function stopName(stop: Stop): string {
  if (stop.is === 'part' || stop.is === 'bond') return stop.at.part ?? 'unknown';
  return stop.is === 'plug' ? stop.id : stop.is;
}
