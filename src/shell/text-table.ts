import { wrap } from './terminal.ts';

export interface TextRow {
  readonly label: string;
  /** A figure for each column; none: a line between rows. */
  readonly cells: readonly string[];
}

export interface TextTable {
  /** Heading of the labels, often ''. */
  readonly corner: string;
  readonly head: readonly string[];
  readonly rows: readonly TextRow[];
}

/** A label of this many letters has room in its column, if the terminal has it; a longer one stands on a line of its own. */
const leastLabel = 14;
const gap = '  ';

/**
 * Lines of a table, figures right-aligned under their headings, no wider than the terminal. A label that is too long for
 * its column stands above its figures. Where not even the figures fit side by side each row is a paragraph that names them.
 */
export function textTable({ corner, head, rows }: TextTable, width: number): readonly string[] {
  const widths = head.map((name, i) => Math.max(name.length, ...rows.map((r) => r.cells[i]?.length ?? 0)));
  const figures = widths.reduce((sum, w) => sum + w + gap.length, 0);
  const room = width - figures;
  if (room < leastLabel) return rows.flatMap((row) => asParagraph(row, head, width));
  const labels = [corner, ...rows.filter((r) => r.cells.length > 0).map((r) => r.label)].map((l) => l.length);
  const column = Math.max(...labels.filter((length) => length <= room), leastLabel);
  const line = (label: string, cells: readonly string[]) =>
    `${label.padEnd(column)}${cells.map((cell, i) => gap + cell.padStart(widths[i]!)).join('')}`.trimEnd();
  return [
    ...labelled(corner, head, column, width, line),
    ...rows.flatMap(({ label, cells }) => labelled(label, cells, column, width, line)),
  ];
}

function labelled(
  label: string,
  cells: readonly string[],
  column: number,
  width: number,
  line: (label: string, cells: readonly string[]) => string,
): readonly string[] {
  if (cells.length === 0) return [wrap(label, width)];
  return label.length <= column ? [line(label, cells)] : [wrap(label, width, 0, 2), line('', cells)];
}

function asParagraph({ label, cells }: TextRow, head: readonly string[], width: number): readonly string[] {
  const named = cells
    .flatMap((cell, i) => (cell.trim() === '' ? [] : [`${head[i]!.trim()} ${cell.trim()}`]))
    .join('; ');
  return [wrap(named === '' ? label : `${label}: ${named}`, width, 0, 2)];
}
