import { type BoxTie, type PlacedRow, portMm, rowMm } from './box-columns.ts';

/** A tie with the height at which it leaves each row, and the lane of the channel in which it runs up or down. */
export interface RoutedTie extends BoxTie {
  readonly from: PlacedRow;
  readonly to: PlacedRow;
  readonly fromMm: number;
  readonly toMm: number;
  readonly lane: number;
}

/** Least distance, along a lane, between the ends of two ties in it. */
const clearMm = 1.2;

/**
 * Each tie gets a place of its own on both rows and the first lane in which it overlaps no other. Ties whose rows do not
 * stand in the drawing are left out. Greedy by upper end, which needs no more lanes than ties overlap at one height.
 */
export function routeTies(ties: readonly BoxTie[], rows: readonly PlacedRow[]): readonly RoutedTie[] {
  const byId = new Map(rows.map((r) => [r.id, r]));
  const known = ties.filter((t) => byId.has(t.a) && byId.has(t.b) && t.a !== t.b);
  const ports = portHeights(known, byId);
  const ends = known.map((t, i) => {
    const [from, to] = [byId.get(t.a)!, byId.get(t.b)!];
    return { ...t, from, to, fromMm: ports.get(`${i}:${t.a}`)!, toMm: ports.get(`${i}:${t.b}`)! };
  });
  const lanes: number[] = [];
  const top = (t: (typeof ends)[number]) => Math.min(t.fromMm, t.toMm);
  return [...ends].sort((x, y) => top(x) - top(y)).map((t) => ({ ...t, lane: takeLane(lanes, t.fromMm, t.toMm) }));
}

/** Ends on one row are ordered by where the other end is, so that ties of one row do not cross one another. */
function portHeights(ties: readonly BoxTie[], byId: ReadonlyMap<string, PlacedRow>): ReadonlyMap<string, number> {
  const heights = new Map<string, number>();
  const ends = new Map<string, { readonly i: number; readonly other: string }[]>();
  for (const [i, t] of ties.entries()) {
    for (const [id, other] of [
      [t.a, t.b],
      [t.b, t.a],
    ] as const)
      ends.set(id, [...(ends.get(id) ?? []), { i, other }]);
  }
  for (const [id, own] of ends) {
    const row = byId.get(id)!;
    const sorted = own.sort((x, y) => byId.get(x.other)!.topMm - byId.get(y.other)!.topMm || x.i - y.i);
    const first = row.topMm + (own.length === 1 ? rowMm / 2 : portMm * 0.6);
    for (const [place, t] of sorted.entries()) heights.set(`${t.i}:${row.id}`, first + place * portMm);
  }
  return heights;
}

/** `lanes` holds, for each lane, down to where it is taken. */
function takeLane(lanes: number[], fromMm: number, toMm: number): number {
  const top = Math.min(fromMm, toMm);
  const free = lanes.findIndex((takenTo) => takenTo + clearMm <= top);
  const lane = free === -1 ? lanes.length : free;
  lanes[lane] = Math.max(fromMm, toMm);
  return lane;
}
