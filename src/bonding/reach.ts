import type { Part } from '../site/site.ts';
import type { Reach } from './bonding.ts';
import type { Opening } from './opening.ts';
import { type SiteIndex, whereOf } from './site-index.ts';
import { type Station, type WireRun, wireRuns } from './wire-runs.ts';

/**
 * What still reaches each box in this state, and each other part at which a line ends (antennas apart, which are what
 * things come from): the lines and conductors that are not taken off it, and the farthest place that each still comes from. Of
 * a line whose other end is pulled the length that is left reaches a box outdoors; indoors it brings nothing. By part;
 * in each by line, then by where from. Linear in the number of stops.
 */
export function reachOf(index: SiteIndex, openings: readonly Opening[]): readonly Reach[] {
  const runs = wireRuns(index, openings);
  const by = new Map([...asked(index)].sort().map((part) => [part, [] as Reach['by'][number][]] as const));
  for (const run of runs) {
    for (const { at, from } of arrivals(index, run)) by.get(at)?.push({ line: run.id, from });
  }
  return [...by].map(([part, found]) => ({ part, by: inOrder(found) }));
}

/** Boxes, and the parts at which a line begins or ends. */
function asked({ site, parts }: SiteIndex): ReadonlySet<string> {
  const boxes = site.equipment.filter((e) => e.present !== 'no').map((e) => e.id);
  const ends = site.lines.filter((line) => line.present !== 'no').flatMap(({ path }) => [path[0], path.at(-1)]);
  const parted = ends.flatMap((stop) => (stop?.is === 'part' ? (parts.get(stop.at.part ?? '') ?? []) : []));
  return new Set([...boxes, ...parted.filter(isEnd).map((part) => part.id)]);
}

const isEnd = (part: Part) => part.present !== 'no' && part.section !== 'antennas';

/** What comes along a piece of a run: the farthest place on it that holds it, else the place where it hangs loose. */
interface Coming {
  readonly from: string | null;
  readonly hangs: string;
}

interface Arrival {
  readonly at: string;
  readonly from: string;
}

function arrivals(index: SiteIndex, { stations }: WireRun): readonly Arrival[] {
  const back = stations.map((s) => ({ ...s, openBefore: s.openAfter, openAfter: s.openBefore })).reverse();
  return [...along(index, stations), ...along(index, back)];
}

/** What arrives at each place from the places before it. */
function along(index: SiteIndex, stations: readonly Station[]): readonly Arrival[] {
  const found: Arrival[] = [];
  let coming: Coming | null = null;
  for (const station of stations) {
    if (coming !== null && station.holds && !station.openBefore) {
      const from = coming.from ?? (whereOf(index, station.name) === 'outside' ? coming.hangs : null);
      if (from !== null && from !== station.name) found.push({ at: station.name, from });
    }
    coming = goingOn(coming, station);
  }
  return found;
}

function goingOn(coming: Coming | null, { name, holds, openBefore, openAfter }: Station): Coming {
  if (openAfter) return { from: null, hangs: name };
  const own = holds ? name : null;
  if (coming === null || openBefore) return { from: own, hangs: name };
  return { from: coming.from ?? own, hangs: coming.hangs };
}

function inOrder(by: readonly Reach['by'][number][]): Reach['by'] {
  const once = new Map(by.map((b) => [`${b.line} ${b.from}`, b]));
  return [...once].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, b]) => b);
}
