import { meetingsOf } from '../bonding/joint-id.ts';
import type { Body, Run, SoilPoint } from '../electrodes/body.ts';
import type { Way as BodyWay, EnclosingSoils } from '../electrodes/solved-resistance.ts';
import { resistancePerMetre } from '../materials/conductor-resistance.ts';
import type { Conductor, Electrode, Part, PointRef, Position, Site } from '../site/site.ts';
import { middle, scale } from '../units/interval.ts';
import { electrodeShape } from './electrode-shape.ts';
import type { LeakingLine } from './leaking-line.ts';
import { lineLengthM, linePieces, pieceCount } from './line-pieces.ts';
import { rangeShare } from './range-share.ts';
import { nearestPair, siteWays, type Way } from './site-ways.ts';

/** Kinds of electrode that are one long piece of wire or strap. */
const longKinds: ReadonlySet<string> = new Set(['buried wire', 'ring', 'radial', 'strap on rock']);

/**
 * An electrode as a line of metal with a resistance of its own; null where it is short, where its metal is not known, or where
 * its resistance was measured, metal and all. What it is said to have alone stays that of one potential: 100 m of 6 AWG copper
 * in 100 ohm m, fed at one end, have 2 % more (0.13 ohm of metal beside 2.2 ohm of soil; a third of it counts).
 */
export function cutElectrode(
  e: Electrode,
  body: Body,
  way: BodyWay | null,
  {
    site,
    partOf,
    soils,
  }: { readonly site: Site; readonly partOf: (id: string) => Part | undefined; readonly soils: EnclosingSoils | null },
): LeakingLine | null {
  const isStated = e.resistance !== null && e.measured !== 'bonded';
  const shape = electrodeShape(e);
  const ohmPerM = e.wire === null ? null : resistancePerMetre(e.wire);
  if (!longKinds.has(e.kind) || isStated || shape === null || ohmPerM === null || middle(ohmPerM) === null) return null;
  // the arms of a star carry alike: together they are one line of so many times the section
  const lines = e.kind === 'radial' ? body.runs.map((run) => [run]) : [body.runs];
  const runs = lines[0]!;
  const lengthM = lineLengthM(runs);
  const count = pieceCount(lengthM);
  if (count < 2) return null;
  const isStraightSomewhere = way === null && e.kind !== 'ring' && e.closed !== 'yes';
  const landingM = isStraightSomewhere ? new Map<string, number>() : landings(e, runs, site, siteWays(site, partOf));
  return {
    part: e.id,
    span: null,
    certain: e.present === 'unknown' ? 'perhaps' : 'there',
    lengthM,
    isClosed: e.kind !== 'radial' && isLoop(runs),
    pieces: linePieces(lines, count),
    ohmPerM: scale(ohmPerM, 1 / lines.length),
    share: rangeShare(shape, soils, way),
    landingM,
  };
}

function isLoop(runs: readonly Run[]): boolean {
  const [a, b] = [runs[0]!.from, runs.at(-1)!.to];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) < 1e-6;
}

/** Of every end and clamp of a conductor that meets it: where it was typed to, else the place nearest to what is next on that conductor. */
function landings(
  e: Electrode,
  runs: readonly Run[],
  site: Site,
  wayOf: (point: PointRef) => Way,
): ReadonlyMap<string, number> {
  const own: Way = [runs[0]!.from, ...runs.map((run) => run.to)].map(([east, north]): Position => [east, north, 0]);
  const found = new Map<string, number | null>();
  for (const { id, atM } of site.conductors.flatMap((c) => meetingsWith(e.id, c, { own, runs, wayOf }))) {
    // two wires in one clamp, or both ends of one wire: the first that is known
    found.set(id, found.get(id) ?? atM);
  }
  return new Map([...found].flatMap(([id, atM]) => (atM === null ? [] : [[id, atM] as const])));
}

interface Line {
  readonly own: Way;
  readonly runs: readonly Run[];
  readonly wayOf: (point: PointRef) => Way;
}

function meetingsWith(electrode: string, c: Conductor, line: Line) {
  const { from, passes, to } = meetingsOf(c);
  const all = [from, ...passes, to];
  return all.flatMap(({ at, joint }, i) => {
    if (at === null || at.part !== electrode) return [];
    const typedM = at.atM === null ? null : middle(at.atM);
    const neighbours = [all[i - 1], all[i + 1]].flatMap((m) => (m?.at == null ? [] : [line.wayOf(m.at)]));
    const near = neighbours.find((way) => way.length > 0);
    return [{ id: joint ?? c.id, atM: typedM ?? (near === undefined ? null : nearestM(near, line)) }];
  });
}

function nearestM(way: Way, { own, runs }: Line): number {
  const [, [east, north]] = nearestPair(way, own);
  let [doneM, bestM, bestApartM] = [0, 0, Number.POSITIVE_INFINITY];
  for (const { from, to } of runs) {
    const lengthM = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
    const share = footShare(from, to, east, north);
    const apartM = Math.hypot(from[0] + share * (to[0] - from[0]) - east, from[1] + share * (to[1] - from[1]) - north);
    if (apartM < bestApartM) [bestM, bestApartM] = [doneM + share * lengthM, apartM];
    doneM += lengthM;
  }
  return bestM;
}

function footShare(from: SoilPoint, to: SoilPoint, east: number, north: number): number {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const squared = x * x + y * y;
  return squared === 0 ? 0 : Math.min(1, Math.max(0, ((east - from[0]) * x + (north - from[1]) * y) / squared));
}
