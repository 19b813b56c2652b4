import type { Line, Part, Stop, Where } from '../site/site.ts';
import { bondOfArrester } from './arrester-bond.ts';
import type { Crossing, LineConductor } from './bonding.ts';
import { stopName } from './line-course.ts';
import { type SiteIndex, whereOf } from './site-index.ts';

interface PlacedStop {
  readonly stop: Stop;
  readonly name: string;
  readonly where: Where;
  /** Bends, and plugs in mid-path, that do not say where they are say nothing of a wall. */
  readonly counts: boolean;
}

/** A wall between two places of a line's path, seen from the building. */
interface Wall {
  readonly building: string;
  readonly certain: boolean;
  /** Stops from the wall outwards and inwards, the nearest first. */
  readonly outwards: readonly PlacedStop[];
  readonly inwards: readonly PlacedStop[];
}

/** Where each conductor of a line goes through a wall, and what it meets there: between two stops whose places differ. */
export function crossingsOf(index: SiteIndex, line: Line, conductors: readonly LineConductor[]): readonly Crossing[] {
  const last = line.path.length - 1;
  const walls = wallsOf(line.path.map((stop, i) => placed(index, stop, i === 0 || i === last)));
  return walls.flatMap((wall) => conductors.map(({ which, count }) => crossing(index, line, wall, which, count)));
}

/** A plug in which a line ends lies somewhere, as a box would: a spare line may come in by it. */
function placed(index: SiteIndex, stop: Stop, isEnd: boolean): PlacedStop {
  const where = whereOfStop(index, stop);
  const silent = stop.is === 'bend' || (stop.is === 'plug' && !isEnd);
  return { stop, name: stopName(stop), where, counts: where !== null || !silent };
}

function whereOfStop(index: SiteIndex, stop: Stop): Where {
  if (stop.is === 'street') return 'outside';
  if (stop.is === 'unknown') return null;
  if (stop.is === 'plug') return stop.where ?? null;
  if (stop.is === 'bend') return stop.where ?? (stop.at === null ? null : whereOf(index, stop.at.part));
  const guyed = stop.at.part === null ? undefined : index.guys.get(stop.at.part);
  return guyed === undefined ? whereOf(index, stop.at.part) : 'outside';
}

/** Walls in the order in which the line meets them. Between two buildings there are two. */
function wallsOf(stops: readonly PlacedStop[]): readonly Wall[] {
  const walls: Wall[] = [];
  const counted = stops.filter((stop) => stop.counts);
  const known = counted.flatMap((stop, i) => (stop.where === null ? [] : [i]));
  known.forEach((i, k) => {
    const j = known[k + 1];
    if (j !== undefined) walls.push(...wallsBetween(counted, i, j));
  });
  const [first, last] = [known[0], known.at(-1)];
  if (first !== undefined && first > 0) walls.push(openEnd(counted, first, -1));
  if (last !== undefined && last < counted.length - 1) walls.push(openEnd(counted, last, 1));
  return walls;
}

function wallsBetween(stops: readonly PlacedStop[], i: number, j: number): readonly Wall[] {
  const [a, b] = [stops[i]!.where!, stops[j]!.where!];
  if (a === b) return [];
  const certain = j === i + 1;
  // With stops between that do not say where they are, the wall may be before or after each of them.
  const back = stops.slice(0, i + 1).reverse();
  const between = stops.slice(i + 1, j);
  const wallOf = (building: string, out: readonly PlacedStop[], inside: readonly PlacedStop[]): Wall => ({
    building,
    certain,
    outwards: out,
    inwards: inside,
  });
  const ahead = stops.slice(j);
  return [
    ...(a === 'outside' ? [] : [wallOf(a, [...between, ...ahead], back)]),
    ...(b === 'outside' ? [] : [wallOf(b, [...[...between].reverse(), ...back], ahead)]),
  ];
}

/** The line goes on to a stop that does not say where it is. */
function openEnd(stops: readonly PlacedStop[], known: number, step: 1 | -1): Wall {
  const here = step === 1 ? stops.slice(0, known + 1).reverse() : stops.slice(known);
  const beyond = step === 1 ? stops.slice(known + 1) : stops.slice(0, known).reverse();
  const inside = stops[known]!.where !== 'outside';
  const building = inside ? stops[known]!.where! : 'unknown';
  return inside
    ? { building, certain: false, outwards: beyond, inwards: here }
    : { building, certain: false, outwards: here, inwards: beyond };
}

function crossing(index: SiteIndex, line: Line, wall: Wall, which: Crossing['which'], count: number): Crossing {
  const entry = stopsAtWall(index, wall);
  const arresters = entry.map((stop) => partOf(index, stop)).filter((part) => part?.section === 'arresters');
  const protector = which === 'core' ? (arresters[0] ?? null) : null;
  return {
    line: line.id,
    building: wall.building,
    after: wall.inwards[0]!.name,
    before: wall.outwards[0]!.name,
    which,
    count,
    protector: protector?.id ?? null,
    bondedTo: which === 'shield' ? shieldBond(index, entry) : protector === null ? null : protectorBond(protector),
    certain: wall.certain,
  };
}

function partOf(index: SiteIndex, { stop }: PlacedStop): Part | null {
  if (stop.is !== 'part' || stop.at.part === null) return null;
  const part = index.parts.get(stop.at.part);
  return part === undefined || part.present === 'no' ? null : part;
}

/**
 * The stops that stand at the wall: from it outwards up to the first that is out in the field (an antenna, a support, a
 * machine), and an entry panel or what is on one just inside, be there a plug before it or not. A stop that does not say
 * where it is stands at the wall only if it is an entry panel or on one.
 */
function stopsAtWall(index: SiteIndex, { outwards, inwards }: Wall): readonly PlacedStop[] {
  const at: PlacedStop[] = [];
  for (const stop of outwards) {
    if (isAfield(index, stop)) break;
    if (stop.where !== null || isEntry(index, stop)) at.push(stop);
  }
  const inner = inwards.find(({ stop }) => stop.is !== 'plug');
  return inner !== undefined && isEntry(index, inner) ? [...at, inner] : at;
}

function isAfield(index: SiteIndex, { stop }: PlacedStop): boolean {
  if (stop.is !== 'part' && stop.is !== 'bond') return stop.is === 'street';
  const section = index.parts.get(stop.at.part ?? '')?.section;
  return section === undefined || !['bars', 'arresters', 'electrodes', 'equipment'].includes(section);
}

function isEntry(index: SiteIndex, { stop }: PlacedStop): boolean {
  if (stop.is !== 'part' && stop.is !== 'bond') return false;
  const part = index.parts.get(stop.at.part ?? '');
  const carrier = index.parts.get(part?.on?.part ?? '');
  return part?.kind === 'entry panel' || carrier?.kind === 'entry panel';
}

function shieldBond(index: SiteIndex, at: readonly PlacedStop[]): string | null {
  for (const placedStop of at) {
    if (placedStop.stop.is === 'bond') return placedStop.stop.at.text;
    const part = partOf(index, placedStop);
    if (part?.section === 'bars') return part.id;
    const bond = part?.section === 'arresters' ? bondOfArrester(part)[0] : undefined;
    if (bond !== undefined) return bond;
  }
  return null;
}

function protectorBond(part: Part): string | null {
  return part.section === 'arresters' ? (bondOfArrester(part)[0] ?? null) : null;
}
