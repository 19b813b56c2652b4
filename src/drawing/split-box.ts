import type { Box, BoxRow } from './box-columns.ts';

/** A box with more rows is set in both columns, so that the drawing need not be made small to fit a sheet. */
const mostRows = 36;

/**
 * A tall box in two: cut where a branch begins that hangs as near to the root as any in the middle third. `apart` rewrites
 * a row whose parent stays in the other half. The halves stand at the left and at the right.
 */
export function splitBox(box: Box, continued: string, apart: (row: BoxRow) => BoxRow): readonly Box[] {
  if (box.rows.length <= mostRows) return [box];
  const cut = cutOf(box.rows);
  const [first, rest] = [box.rows.slice(0, cut), box.rows.slice(cut)];
  const ids = new Set(rest.map((r) => r.id));
  const loose = rest.map((r) => (r.parent !== null && !ids.has(r.parent) ? apart(r) : r));
  const least = Math.min(...loose.map((r) => r.indent));
  return [
    { ...box, rows: first, column: 'left' },
    { title: continued, rows: loose.map((r) => ({ ...r, indent: r.indent - least })), column: 'right' },
  ];
}

function cutOf(rows: readonly BoxRow[]): number {
  const middle = rows.length / 2;
  const places = rows.map((_, i) => i).filter((i) => Math.abs(i - middle) <= rows.length / 6);
  const cost = (i: number) => rows[i]!.indent * rows.length + Math.abs(i - middle);
  return places.reduce((best, i) => (cost(i) < cost(best) ? i : best));
}
