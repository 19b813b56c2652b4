import type { SymbolName } from './symbols.ts';
import type { TieStyle } from './tie-style.ts';

/** A part in a box. `parent` is the row that it hangs on by a bond, drawn as a tree. */
export interface BoxRow {
  readonly id: string;
  readonly symbol: SymbolName;
  readonly number: string;
  readonly name: string;
  /** What ties it to its parent, at the right: `by 45`. */
  readonly note: string;
  /** Rows of the table of weak points that it stands in: `W1 W4`; '' for none. */
  readonly mark: string;
  readonly indent: number;
  readonly parent: string | null;
  readonly parentStyle: TieStyle;
}

export interface Box {
  readonly title: string;
  readonly rows: readonly BoxRow[];
  /** null: wherever there is room. */
  readonly column: 'left' | 'right' | null;
}

/** A tie drawn in the channel between the columns, from row to row. */
export interface BoxTie {
  readonly a: string;
  readonly b: string;
  readonly style: TieStyle;
  readonly label: string;
}

export interface PlacedRow extends BoxRow {
  readonly side: 'left' | 'right';
  readonly topMm: number;
  readonly heightMm: number;
  readonly boxTopMm: number;
}

export interface PlacedBox extends Box {
  readonly side: 'left' | 'right';
  readonly topMm: number;
  readonly heightMm: number;
  readonly placed: readonly PlacedRow[];
}

export const rowMm = 4.8;
export const portMm = 3;
export const titleMm = 5.4;
const gapMm = 3.2;
const loneGapMm = 1.4;

/**
 * Two columns of boxes: fixed ones where they belong, the others, greatest first, in the column that is shorter. Those at
 * the right are then ordered by where their ties come from, so that fewer cross. Rows grow with the ties that end on them.
 */
export function placeBoxes(boxes: readonly Box[], ties: readonly BoxTie[]): readonly PlacedBox[] {
  const ends = countEnds(ties);
  const height = (b: Box) => boxHeight(b, ends);
  const columns = { left: [] as Box[], right: [] as Box[] };
  for (const b of boxes) if (b.column !== null) columns[b.column].push(b);
  const free = boxes.filter((b) => b.column === null);
  const total = (list: readonly Box[]) => list.reduce((sum, b) => sum + height(b) + gapMm, 0);
  const heights = { left: total(columns.left), right: total(columns.right) };
  for (const b of free.toSorted((x, y) => height(y) - height(x))) {
    const side = heights.left <= heights.right ? 'left' : 'right';
    columns[side].push(b);
    heights[side] += height(b) + gapMm;
  }
  const left = stack(columns.left, 'left', ends);
  return [...left, ...stack(byTies(columns.right, left, ties), 'right', ends)];
}

/** How many ties end on each row. */
type Ends = ReadonlyMap<string, number>;

function countEnds(ties: readonly BoxTie[]): Ends {
  const ends = new Map<string, number>();
  for (const id of ties.flatMap((t) => (t.a === t.b ? [t.a] : [t.a, t.b]))) ends.set(id, (ends.get(id) ?? 0) + 1);
  return ends;
}

function boxHeight(box: Box, ends: Ends): number {
  const rows = box.rows.reduce((sum, r) => sum + rowHeight(r, ends), 0);
  return rows + (box.title === '' ? 0 : titleMm) + 0.8;
}

function rowHeight(row: BoxRow, ends: Ends): number {
  return Math.max(rowMm, (ends.get(row.id) ?? 0) * portMm + 0.6);
}

function stack(boxes: readonly Box[], side: 'left' | 'right', ends: Ends): readonly PlacedBox[] {
  const placed: PlacedBox[] = [];
  let y = 0.5;
  for (const box of boxes) {
    const heightMm = boxHeight(box, ends);
    placed.push({ ...box, side, topMm: y, heightMm, placed: placeRows(box, side, y, ends) });
    y += heightMm + (box.rows.length === 1 && box.title === '' ? loneGapMm : gapMm);
  }
  return placed;
}

function placeRows(box: Box, side: 'left' | 'right', topMm: number, ends: Ends): readonly PlacedRow[] {
  let y = topMm + (box.title === '' ? 0 : titleMm) + 0.4;
  return box.rows.map((r) => {
    const heightMm = rowHeight(r, ends);
    const placed = { ...r, side, topMm: y, heightMm, boxTopMm: topMm };
    y += heightMm;
    return placed;
  });
}

/** By the mean height of the rows at the left that they are tied to; those tied to none keep their order at the end. */
function byTies(right: readonly Box[], left: readonly PlacedBox[], ties: readonly BoxTie[]): readonly Box[] {
  const heights = new Map(left.flatMap((b) => b.placed.map((r) => [r.id, r.topMm] as const)));
  const mean = (box: Box) => {
    const ids = new Set(box.rows.map((r) => r.id));
    const others = ties.flatMap((t) => (ids.has(t.a) ? [t.b] : ids.has(t.b) ? [t.a] : []));
    const found = others.flatMap((id) => heights.get(id) ?? []);
    return found.length === 0 ? Infinity : found.reduce((sum, y) => sum + y, 0) / found.length;
  };
  const means = right.map((box, place) => ({ box, place, mean: mean(box) }));
  return means.sort((x, y) => (x.mean === y.mean ? x.place - y.place : x.mean - y.mean)).map((m) => m.box);
}
