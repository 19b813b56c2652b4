import { type Interval, isExact } from '../../units/interval.ts';
import type { Part, PointRef, Position, Site } from '../site.ts';
import { partSections } from '../site.ts';

/** Where something is, in metres; `upM` is null where its height was not typed. */
export interface Point {
  readonly eastM: number;
  readonly northM: number;
  readonly upM: number | null;
}

/** Parts that are met at one place; a ring or a pipe may be met anywhere along it. */
const pointElectrodes: readonly string[] = ['rod', 'plate', 'pipe', 'well casing', 'drilled rod'];
const pointSections: readonly string[] = ['electrodes', 'supports', 'antennas', 'bars', 'arresters', 'equipment'];
/** What hangs on what hangs on what. */
const deepest = 10;

/** Finds where the points of a site are; null where that is not known, or not one place. */
export function pointFinder(site: Site): (ref: PointRef) => Point | null {
  const parts = new Map<string, Part>(partSections.flatMap((s) => site[s].map((p): [string, Part] => [p.id, p])));
  const find = (ref: PointRef, depth: number): Point | null => {
    const part = ref.part === null ? undefined : parts.get(ref.part);
    if (part === undefined || depth > deepest || !pointSections.includes(part.section)) return null;
    if (part.section === 'electrodes' && !pointElectrodes.includes(part.kind)) return null;
    if (part.count > 1) return null;
    const foot = part.position === null ? carried(part, depth) : atPosition(part.position);
    if (foot === null || part.section !== 'supports') return foot;
    return { ...foot, upM: heightOn(ref, part.heightM) };
  };
  const carried = ({ on }: Part, depth: number) => (on === null ? null : find(on, depth + 1));
  return (ref) => find(ref, 0);
}

/** A height of nothing is one that was left out as often as one that was typed. */
function atPosition([eastM, northM, upM]: Position): Point {
  return { eastM, northM, upM: upM === 0 ? null : upM };
}

function heightOn({ atM, mark }: PointRef, heightM: Interval | null): number | null {
  if (mark === 'base') return 0;
  const at = mark === 'top' ? heightM : atM;
  return at !== null && isExact(at) ? at.low : null;
}

/** The least that two points can be apart. */
export function leastApartM(a: Point, b: Point): number {
  const up = a.upM === null || b.upM === null ? 0 : a.upM - b.upM;
  return Math.hypot(a.eastM - b.eastM, a.northM - b.northM, up);
}
