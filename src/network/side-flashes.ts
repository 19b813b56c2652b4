import type { BondingRun } from '../bonding/bonding-of.ts';
import { whereOf } from '../bonding/site-index.ts';
import { isMetal } from '../bonding/support-metal.ts';
import type { Metalwork, Position, Site, Support } from '../site/site.ts';
import { bondingDistance } from '../surge/bonding-distance.ts';
import { simpleShare } from '../surge/current-share.ts';
import { separationDistance } from '../surge/separation-distance.ts';
import { levelFigures, type ProtectionLevel } from '../surge/stroke-levels.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';
import { exact, type Interval, middle } from '../units/interval.ts';
import { nearestOfWays, type SidePoint } from './nearest-of-ways.ts';
import { routeWay } from './site-ways.ts';
import type { StrikeBranch } from './strike-branches.ts';
import { wayLengthM } from './strike-ways.ts';

/** A way down for the current beside metal that it could jump to. */
export interface SideFlash {
  /** null: how far the metal is from any of the ways is not known. */
  readonly way: string | null;
  readonly metal: string;
  readonly distanceM: Interval | null;
  /** Along the way from the nearest point down to the soil; null: not known. */
  readonly lengthM: number | null;
  /** Whether the height of the metal is not known, and the top of the way was taken. */
  readonly heightTaken: boolean;
  readonly downConductors: number;
  readonly between: 'air' | 'solid' | 'unknown';
  readonly nfpaM: Interval | null;
  /** Over the levels, where nobody claims one. */
  readonly iecM: Interval | null;
  readonly level: ProtectionLevel | null;
  readonly outcome: 'met' | 'not met' | 'cannot tell';
}

/** A way down: a support of metal, a wire or a shield that leads from a support or an antenna. */
interface DownWay {
  readonly id: string;
  readonly points: readonly Position[];
  readonly downConductors: number;
}

/**
 * Every way down beside metal that no conductor ties straight to it: the distance there is, and what NFPA 780 (bonding distance)
 * and IEC 62305-3 (separation distance) ask there. Metal in the soil is left out: both are of flashes through air and walls.
 * `branches`: those of the strike's network, for the ways. In order of outcome (not met first), then of the ids.
 */
export function sideFlashes(run: BondingRun, branches: readonly StrikeBranch[]): readonly SideFlash[] {
  const { site } = run;
  const { groupOf } = run.bonding;
  const ways = downWays(site, branches);
  const metals = [...site.metalwork.filter((m) => m.present !== 'no' && m.buried !== 'yes'), ...standing(site)];
  const tied = directTies(site);
  const rows = metals.flatMap((metal): readonly SideFlash[] => {
    const beside = ways.filter(({ id }) => id !== metal.id && !tied.has(`${id} ${metal.id}`) && !isOn(metal, id));
    const isBonded = beside.some(({ id }) => groupOf.get(id) === groupOf.get(metal.id));
    const known = beside.flatMap((way) => flashOf(run, way, metal) ?? []);
    const isLost =
      known.length === 0 && beside.length > 0 && metal.section === 'metalwork' && !isBonded && !isPlaced(metal);
    return isLost ? [{ ...nothingKnown, metal: metal.id }] : known;
  });
  return rows.sort((a, b) => rank(a) - rank(b) || byCodeUnit(keyOf(a), keyOf(b)));
}

const nothingKnown = {
  way: null,
  distanceM: null,
  lengthM: null,
  heightTaken: false,
  downConductors: 1,
  between: 'unknown',
  nfpaM: null,
  iecM: null,
  level: null,
  outcome: 'cannot tell',
} as const;

type Beside = Metalwork | Support;

/** Masts are ways down themselves, but not each other's. */
function standing(site: Site): readonly Support[] {
  return site.supports.filter((s) => s.present !== 'no' && isMetal(s) === 'yes');
}

function isOn({ on }: Beside, way: string): boolean {
  return on?.part === way;
}

/** Leads from a support or an antenna down; wires of one support share. */
function downWays(site: Site, branches: readonly StrikeBranch[]): readonly DownWay[] {
  const carriers = new Set([...site.supports, ...site.antennas].map(({ id }) => id));
  const topOf = (id: string): string | null => {
    const c = site.conductors.find((one) => one.id === id);
    if (c !== undefined) return [c.from.part, c.to.part].find((end) => end !== null && carriers.has(end)) ?? null;
    const line = site.lines.find((one) => one.id === id);
    const stops = line?.path.flatMap((stop) => (stop.is === 'part' || stop.is === 'bond' ? [stop.at.part] : [])) ?? [];
    return stops.find((stop) => stop !== null && carriers.has(stop)) ?? null;
  };
  const wires = new Map<string, number>();
  for (const { id } of site.conductors) {
    const top = topOf(id);
    if (top !== null) wires.set(top, (wires.get(top) ?? 0) + 1);
  }
  const supports = new Set(standing(site).map(({ id }) => id));
  const spans = new Map<string, (readonly Position[])[]>();
  for (const { part, way } of branches) {
    if (way === null || !(supports.has(part) || topOf(part) !== null)) continue;
    spans.set(part, [...(spans.get(part) ?? []), way]);
  }
  return [...spans].flatMap(([id, own]) => {
    const points = downward(own).filter(([, , up]) => up >= 0);
    const isWire = site.conductors.some((c) => c.id === id);
    return points.length < 2 ? [] : [{ id, points, downConductors: isWire ? (wires.get(topOf(id)!) ?? 1) : 1 }];
  });
}

/** From the highest point on, span after span as they meet; they may come in any order. */
function downward(spans: readonly (readonly Position[])[]): readonly Position[] {
  const turned = spans.map((span) => (span[0]![2] >= span.at(-1)![2] ? span : [...span].reverse()));
  const left = turned.sort((a, b) => b[0]![2] - a[0]![2]);
  const points = [...left.shift()!];
  for (;;) {
    const end = points.at(-1)!;
    const next = left.findIndex((span) => isSame(span[0]!, end) || isSame(span.at(-1)!, end));
    if (next < 0) return points;
    const [span] = left.splice(next, 1);
    points.push(...(isSame(span![0]!, end) ? span! : [...span!].reverse()).slice(1));
  }
}

function isSame(a: Position, b: Position): boolean {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) < sameM;
}

const sameM = 0.01;

/** `way metal` of each pair that a conductor joins without anything between, or of which one stops at the other. */
function directTies({ conductors, lines }: Site): ReadonlySet<string> {
  const pairs = conductors.flatMap(({ id, from, to, passes }) => {
    const parts = [from.part, to.part, ...passes.map((p) => p.at.part)].filter((p): p is string => p !== null);
    return parts.flatMap((a) => [`${id} ${a}`, ...parts.map((b) => `${a} ${b}`)]);
  });
  const stops = lines.flatMap(({ id, path }) =>
    path.flatMap((stop) => (stop.is === 'part' || stop.is === 'bond' ? [`${id} ${stop.at.part}`] : [])),
  );
  return new Set([...pairs, ...stops]);
}

/** null: how far they are apart is not known, or so far that nothing is asked. */
function flashOf(run: BondingRun, way: DownWay, metal: Beside): SideFlash | null {
  const near = placeBeside(run.site, way, metal);
  if (near === null) return null;
  const { distanceM, lengthM, heightTaken } = near;
  const level = levelFigures(levelClaimed(run.site) ?? '')?.level ?? null;
  const between = betweenOf(run, way.id, metal.id);
  const count = way.downConductors;
  const nfpaM = exact(bondingDistance(lengthM, count, between === 'solid' ? 'solid' : 'air'));
  const iec = (of: ProtectionLevel) =>
    separationDistance(of, between === 'air' ? 'air' : 'solid', simpleShare(count), lengthM);
  const iecM = level === null ? { low: iec('IV'), high: iec('I') } : exact(iec(level));
  const asked = askedBy(run.site, nfpaM, iecM);
  if (distanceM.low > farTimes * Math.max(nfpaM.high, iecM.high)) return null;
  const outcome = distanceM.low >= asked.high ? 'met' : distanceM.high < asked.low ? 'not met' : 'cannot tell';
  return {
    way: way.id,
    metal: metal.id,
    distanceM,
    lengthM,
    heightTaken,
    downConductors: count,
    between,
    nfpaM,
    iecM,
    level,
    outcome,
  };
}

/** Beyond so many times of what is asked a pair is none. Ours. */
const farTimes = 3;

/** By the method of the region; where that is not known, by whichever asks for more or less. */
function askedBy({ header }: Site, nfpaM: Interval, iecM: Interval): Interval {
  if (header.region === 'us' || header.region === 'ca') return nfpaM;
  if (header.region !== 'unknown') return iecM;
  return { low: Math.min(nfpaM.low, iecM.low), high: Math.max(nfpaM.high, iecM.high) };
}

/** `class II`, `II`, `LPL II`. */
function levelClaimed({ header }: Site): string | null {
  return /\b(IV|I{1,3})\b/.exec(header.claims ?? '')?.[1] ?? null;
}

function betweenOf({ metal: { index } }: BondingRun, way: string, metal: string): SideFlash['between'] {
  const where = (id: string) => {
    const part = index.parts.get(id);
    const isOutside = part !== undefined && (part.section === 'supports' || outdoors.has(part.kind));
    return whereOf(index, id) ?? (isOutside ? 'outside' : null);
  };
  const [a, b] = [where(way), where(metal)];
  if (a === null || b === null) return 'unknown';
  return a === b ? 'air' : 'solid';
}

/** Kinds of metalwork that stand outside unless somebody says otherwise. */
const outdoors: ReadonlySet<string> = new Set([
  'fence',
  'gutter',
  'siding',
  'railing',
  'roof sheet',
  'solar array',
  'pool',
  'service mast',
]);

interface PlaceBeside {
  readonly distanceM: Interval;
  readonly lengthM: number;
  readonly heightTaken: boolean;
}

/** Kinds that stand on the ground; of others a height of 0 is one that nobody typed. */
const onGround: ReadonlySet<string> = new Set(['gas pipe', 'water pipe', 'fence', 'railing', 'pool', 'property line']);

/** A typed distance wins over places. */
function placeBeside(site: Site, way: DownWay, metal: Beside): PlaceBeside | null {
  const top = way.points[0]!;
  const wholeM = wayLengthM(way.points) + Math.max(0, way.points.at(-1)![2]);
  const typed = typedDistance(site, way.id, metal);
  const isLow = metal.section === 'metalwork' && onGround.has(metal.kind);
  const lowM = metal.section === 'metalwork' ? ((metal.sizeM === null ? null : middle(metal.sizeM)) ?? usualLowM) : 0;
  if (typed !== null) return { distanceM: typed, lengthM: isLow ? Math.min(wholeM, lowM) : wholeM, heightTaken: true };
  const route = routeOf(metal);
  if (route.length === 0) return null;
  const isFlat = metal.section === 'metalwork' && route.every(([, , up]) => up === 0);
  // metal of unknown height is tried at that of the top: the most that can be asked
  const upM = isLow ? Math.min(top[2], lowM) : top[2];
  const nearest = nearestOfWays(way.points, isFlat ? route.map((p): Position => [p[0], p[1], upM]) : route);
  return { distanceM: exact(nearest.distanceM), lengthM: downFrom(way.points, nearest), heightTaken: isFlat };
}

/** What stands on the ground is taken to be so high. Ours. */
const usualLowM = 2.5;

function isPlaced(metal: Beside): boolean {
  return routeOf(metal).length > 0;
}

function downFrom(points: readonly Position[], { index, at }: SidePoint): number {
  return wayLengthM([at, ...points.slice(index + 1)]) + Math.max(0, points.at(-1)![2]);
}

function typedDistance(site: Site, way: string, metal: Beside): Interval | null {
  const part = [...site.supports, ...site.conductors, ...site.lines].find(({ id }) => id === way);
  const own = metal.near.find((n) => n.part === way) ?? part?.near.find((n) => n.part === metal.id);
  return own?.distanceM ?? null;
}

function routeOf(metal: Beside): readonly Position[] {
  if (metal.section === 'metalwork') {
    const route = routeWay(metal.route);
    if (route.length > 0) return route;
    return metal.position === null ? [] : [metal.position];
  }
  const heightM = metal.heightM === null ? null : middle(metal.heightM);
  const foot = metal.position;
  return foot === null || heightM === null ? [] : [foot, [foot[0], foot[1], foot[2] + heightM]];
}

function rank({ outcome }: SideFlash): number {
  return ['not met', 'cannot tell', 'met'].indexOf(outcome);
}

function keyOf({ way, metal }: SideFlash): string {
  return `${metal} ${way ?? ''}`;
}
