import type { Pad } from './pad.ts';
import type { Point } from './point.ts';

/** Pads by square cells of the ground, so that a straight piece asks only those near it. */
export interface PadCells {
  /** Whether `test` holds for a pad near the straight piece from a to b; each near pad is asked at most once. */
  readonly some: (a: Point, b: Point, test: (pad: Pad) => boolean) => boolean;
}

/** Cells for each side of the ground: enough for a few pads a cell, few enough to walk along. */
const MOST_CELLS = 64;

/** Sorts pads into cells once. */
export function padCells(pads: readonly Pad[]): PadCells {
  if (pads.length === 0) return { some: () => false };
  const grid = gridOf(pads);
  const cells = new Map<number, number[]>();
  pads.forEach((pad, i) => {
    for (let x = grid.column(pad.low[0]); x <= grid.column(pad.high[0]); x++) {
      for (let y = grid.row(pad.low[1]); y <= grid.row(pad.high[1]); y++) {
        const key = x * MOST_CELLS + y;
        const cell = cells.get(key);
        if (cell === undefined) cells.set(key, [i]);
        else cell.push(i);
      }
    }
  });
  const asked = new Int32Array(pads.length);
  let question = 0;
  const some = (a: Point, b: Point, test: (pad: Pad) => boolean): boolean => {
    question++;
    return someCell(a, b, grid, (key) => {
      for (const i of cells.get(key) ?? nothing) {
        if (asked[i] === question) continue;
        asked[i] = question;
        if (test(pads[i]!)) return true;
      }
      return false;
    });
  };
  return { some };
}

interface Grid {
  readonly column: (east: number) => number;
  readonly row: (north: number) => number;
  readonly west: (column: number) => number;
}

function gridOf(pads: readonly Pad[]): Grid {
  const low = [0, 1].map((axis) => pads.reduce((least, p) => Math.min(least, p.low[axis]!), Infinity));
  const high = [0, 1].map((axis) => pads.reduce((most, p) => Math.max(most, p.high[axis]!), -Infinity));
  const perSide = Math.min(MOST_CELLS, Math.max(1, Math.ceil(Math.sqrt(pads.length))));
  const cell = [0, 1].map((axis) => Math.max((high[axis]! - low[axis]!) / perSide, Number.MIN_VALUE));
  const at = (value: number, axis: number) =>
    Math.min(perSide - 1, Math.max(0, Math.floor((value - low[axis]!) / cell[axis]!)));
  return {
    column: (east) => at(east, 0),
    row: (north) => at(north, 1),
    west: (column) => low[0]! + column * cell[0]!,
  };
}

const nothing: readonly number[] = [];

/**
 * Asks the cells that the straight piece runs through, column by column, until one says yes; a cell more at each end of a
 * column does no harm.
 */
function someCell(a: Point, b: Point, grid: Grid, ask: (key: number) => boolean): boolean {
  const [w, e] = a[0] <= b[0] ? [a, b] : [b, a];
  const slope = e[0] > w[0] ? (e[1] - w[1]) / (e[0] - w[0]) : 0;
  const northAt = (east: number) => w[1] + slope * (Math.min(e[0], Math.max(w[0], east)) - w[0]);
  const last = grid.column(e[0]);
  let from = w[1];
  for (let x = grid.column(w[0]); x <= last; x++) {
    const to = x === last ? e[1] : northAt(grid.west(x + 1));
    const high = grid.row(Math.max(from, to)) + 1;
    for (let y = Math.max(0, grid.row(Math.min(from, to)) - 1); y <= high; y++)
      if (ask(x * MOST_CELLS + y)) return true;
    from = to;
  }
  return false;
}
