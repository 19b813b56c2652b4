import type { Study } from '../../study/study.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Interval } from '../../units/interval.ts';
import { readQuantity } from '../../units/quantity.ts';
import { isInside, roundWallM } from './building-walls.ts';
import { isStop, type LinePath, linePath } from './line-path.ts';
import { plannedLength } from './owner-units.ts';
import { ownerOf, type Scene } from './scene.ts';
import { apartM, type Spot, spotsOf } from './way-to-lay.ts';

type Conductor = Study['conductors'][number];

/** A panel that goes from one place on the walls of its building to another. */
export interface PanelShift {
  readonly panel: string;
  readonly building: string;
  readonly from: Spot;
  readonly to: Spot;
  /** How much lower it hangs then, metres; never higher. */
  readonly downM: number;
  /** Itself and the arresters on it: what goes along. */
  readonly carried: ReadonlySet<string>;
}

/** The panel, and every arrester that is bolted to it. */
export function carriedBy(scene: Scene, panel: string): ReadonlySet<string> {
  const arresters = scene.study.arresters.filter((a) => a.on !== null && ownerOf(a.on) === panel);
  return new Set([panel, ...arresters.map((a) => a.id)]);
}

/**
 * How much longer a thing gets at most that ends on the panel: laid as it lies now, then along the wall to the new place.
 * That can always be done, whatever way it takes.
 */
export function farthestM(scene: Scene, { building, from, to, downM }: PanelShift): number {
  return Math.max(roundWallM(scene, building, from, to) ?? 0, apartM(from, to)) + downM;
}

/**
 * What a wire or cable that ends on the panel is long at the new place, at most, metres. Where its other end has a place that
 * no wall hides, by as much longer or shorter as that is farther or nearer: the detours that it takes stay. Else as it lies,
 * and then along the wall.
 */
export function relaidM(scene: Scene, shift: PanelShift, other: string | null, lengthM: Interval): number {
  const most = lengthM.high + farthestM(scene, shift);
  const spots = other === null ? [] : spotsOf(scene.part(ownerOf(other)));
  if (spots.length === 0 || !isInSight(scene, shift, other!)) return most;
  const nearM = (spot: Spot) => Math.min(...spots.map((s) => apartM(s, spot)));
  const detourM = lengthM.high - nearM(shift.from);
  return Math.min(most, Math.max(0, detourM) + nearM(shift.to) + shift.downM);
}

/** Steps in which a straight way is looked along for a wall. */
const steps = 40;

/** Whether the straight way from a thing to the new place goes through no building but the one that it is in. */
function isInSight(scene: Scene, { to }: PanelShift, other: string): boolean {
  const part = scene.part(ownerOf(other));
  const walls = scene.study.buildings.filter((b) => b.id !== part?.where);
  return spotsOf(part).every(([e, n]) =>
    Array.from({ length: steps - 1 }, (_, i) => (i + 1) / steps).every((share) => {
      const spot: Spot = [e + share * (to[0] - e), n + share * (to[1] - n)];
      return walls.every((b) => !isInside(scene, b.id, spot));
    }),
  );
}

/** Conductors that end on the panel or on an arrester of it, each with its other end; those with both ends there left out. */
export function wiresOf(
  scene: Scene,
  carried: ReadonlySet<string>,
): readonly { readonly row: Conductor; readonly other: string }[] {
  return scene.study.conductors.flatMap((row) => {
    const [isFrom, isTo] = [row.from, row.to].map((end) => carried.has(ownerOf(end)));
    return isFrom === isTo ? [] : [{ row, other: isFrom ? row.to : row.from }];
  });
}

/** A line with a stop on the panel, with the lengths that it has at the new place. */
export interface RelaidLine {
  readonly id: string;
  readonly field: 'lengths' | 'length';
  readonly value: ChangeValue;
  /** Cable beside what is there; null: nobody can tell. */
  readonly moreM: number | null;
  readonly cable: string;
}

export function relaidLines(scene: Scene, shift: PanelShift): readonly RelaidLine[] {
  return scene.study.lines.flatMap((line) => {
    const path = linePath(scene, line.id);
    if (path === null || !path.stops.some((s) => shift.carried.has(pointOf(s)))) return [];
    const typed = scene.part(line.id)?.typed ?? {};
    const cable = typed.cable ?? line.kind;
    if (path.lengths.length > 0) return [{ id: line.id, cable, ...byPieces(scene, shift, path) }];
    return typed.length === undefined ? [] : [{ id: line.id, cable, ...asAWhole(scene, shift, path, typed.length) }];
  });
}

/** Pieces between two stops, those left out that stay or that go along with both ends. */
function byPieces(scene: Scene, shift: PanelShift, path: LinePath): Pick<RelaidLine, 'field' | 'value' | 'moreM'> {
  const { units } = scene.study.site;
  const pieces = piecesOf(path);
  const relaid = path.lengths.map((text, i) => {
    const lengthM = readLength(text, units);
    const other = otherEnd(shift, pieces[i]);
    if (other === 'stays') return { text, moreM: 0 };
    if (lengthM === null) return { text: 'unknown', moreM: null };
    const now = plannedLength(relaidM(scene, shift, other, lengthM), units);
    return { text: now.text, moreM: now.lengthM - lengthM.low };
  });
  return { field: 'lengths', value: relaid.map((r) => r.text), moreM: sumOf(relaid.map((r) => r.moreM)) };
}

function asAWhole(
  scene: Scene,
  shift: PanelShift,
  path: LinePath,
  text: string,
): Pick<RelaidLine, 'field' | 'value' | 'moreM'> {
  const { units } = scene.study.site;
  const lengthM = readLength(text, units);
  if (lengthM === null) return { field: 'length', value: 'unknown', moreM: null };
  const ends = piecesOf(path).filter((p) => otherEnd(shift, p) !== 'stays');
  const now = plannedLength(lengthM.high + ends.length * farthestM(scene, shift), units);
  return { field: 'length', value: now.text, moreM: now.lengthM - lengthM.low };
}

interface Piece {
  readonly ends: readonly [string, string];
  /** It turns at a bend on its way. */
  readonly isBent: boolean;
}

function piecesOf({ stops }: LinePath): readonly Piece[] {
  const named = stops.flatMap((s, i) => (isStop(s, 'bend') ? [] : [i]));
  return named.slice(1).map((at, n) => ({
    ends: [pointOf(stops[named[n]!]!), pointOf(stops[at]!)],
    isBent: at - named[n]! > 1,
  }));
}

/** The end that stays where it is; null: it has no place, or a bend stands between; `stays`: the piece does not change. */
function otherEnd({ carried }: PanelShift, piece: Piece | undefined): string | null | 'stays' {
  const [a, b] = piece?.ends ?? ['', ''];
  if (carried.has(a) === carried.has(b)) return 'stays';
  return piece!.isBent ? null : carried.has(a) ? b : a;
}

/** The part that a stop is at; a plug and the street are at none. */
function pointOf(stop: ChangeValue): string {
  if (typeof stop !== 'object') return ownerOf(String(stop));
  return isStop(stop, 'bond') ? ownerOf(String((stop as { readonly bond: ChangeValue }).bond)) : '';
}

/** null: unknown, without an end, or written in a way that is not read here. */
function readLength(text: string, units: 'ft' | 'm'): Interval | null {
  const read = readQuantity(text, 'length', { bareUnit: units });
  return read.ok && Number.isFinite(read.interval.high) ? read.interval : null;
}

function sumOf(figures: readonly (number | null)[]): number | null {
  return figures.includes(null) ? null : figures.reduce<number>((sum, f) => sum + f!, 0);
}
