import type { Reach } from './bonding.ts';
import type { Opening } from './opening.ts';
import { type SiteIndex, whereOf } from './site-index.ts';
import { type Station, type WireRun, wireRuns } from './wire-runs.ts';

/**
 * What still reaches each box in this state: the lines and conductors that are not taken off it, and the farthest place that each still
 * comes from. The same, lines only, for each other part at which a line begins or ends; not for antennas, from which
 * things come. Of a line whose far end is pulled the length that is left reaches a box outdoors; indoors it brings
 * nothing. By part; in each by line, then by where from. Linear in the number of stops.
 */
export function reachOf(index: SiteIndex, openings: readonly Opening[]): readonly Reach[] {
  const by = new Map<string, Reach['by'][number][]>();
  for (const box of index.site.equipment) if (box.present !== 'no') by.set(box.id, []);
  for (const run of wireRuns(index, openings)) {
    const ends = run.is === 'line' ? endsOf(index, run) : [];
    for (const end of ends) if (!by.has(end)) by.set(end, []);
    for (const { at, from } of arrivals(index, run)) {
      if (isBox(index, at) || ends.includes(at)) by.get(at)!.push({ line: run.id, from });
    }
  }
  return [...by].sort(([a], [b]) => (a < b ? -1 : 1)).map(([part, found]) => ({ part, by: inOrder(found) }));
}

const isBox = ({ parts }: SiteIndex, id: string) => parts.get(id)?.section === 'equipment';

/** Parts at which a line begins and ends. */
function endsOf({ parts }: SiteIndex, { stations }: WireRun): readonly string[] {
  const ends = [stations[0], stations.at(-1)].flatMap((station) => parts.get(station?.name ?? '') ?? []);
  return ends.filter((part) => part.present !== 'no' && part.section !== 'antennas').map((part) => part.id);
}

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
