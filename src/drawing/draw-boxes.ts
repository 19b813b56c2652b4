import { type Box, type BoxTie, type PlacedBox, type PlacedRow, placeBoxes, rowMm, titleMm } from './box-columns.ts';
import { type RoutedTie, routeTies } from './channel.ts';
import { element, type Point, polygon, polyline, type Svg, text } from './svg.ts';
import { ink, soft, symbol } from './symbols.ts';
import { fitText, textWidth } from './text-width.ts';
import { strokeOf } from './tie-style.ts';

const labelMm = 9;
const usualLaneMm = 2.2;
const leastLaneMm = 0.9;
const widestLanesMm = 56;
const indentMm = 4;
const deepest = 9;
const nameSize = 2.7;
const noteSize = 2.2;

interface Frame {
  readonly widthMm: number;
  readonly columnMm: number;
  readonly laneMm: number;
}

/** Boxes in two columns with their ties in a channel between; gives the pieces and the height that they need. */
export function drawBoxes(boxes: readonly Box[], ties: readonly BoxTie[], widthMm: number) {
  const placed = placeBoxes(boxes, ties);
  const routed = routeTies(
    ties,
    placed.flatMap((b) => b.placed),
  );
  const lanes = routed.reduce((most, t) => Math.max(most, t.lane + 1), 0);
  const laneMm = Math.max(leastLaneMm, Math.min(usualLaneMm, widestLanesMm / Math.max(1, lanes)));
  const frame = { widthMm, laneMm, columnMm: (widthMm - 2 * labelMm - lanes * laneMm) / 2 };
  const heightMm = placed.reduce((most, b) => Math.max(most, b.topMm + b.heightMm), 0) + 0.5;
  const children = [...routed.map((t) => drawTie(t, frame)), ...placed.flatMap((b) => drawBox(b, frame))];
  const labels = routed.flatMap((t) => [drawLabel(t, t.from, t.fromMm, frame), drawLabel(t, t.to, t.toMm, frame)]);
  return { heightMm, children: [...children, ...labels] };
}

function leftOf(side: 'left' | 'right', frame: Frame): number {
  return side === 'left' ? 0.4 : frame.widthMm - frame.columnMm + 0.4;
}

function edgeOf(side: 'left' | 'right', frame: Frame): number {
  return side === 'left' ? frame.columnMm - 0.4 : frame.widthMm - frame.columnMm + 0.4;
}

function drawTie(t: RoutedTie, frame: Frame): Svg {
  const x = frame.columnMm + labelMm + (t.lane + 0.5) * frame.laneMm;
  const points: readonly Point[] = [
    [edgeOf(t.from.side, frame), t.fromMm],
    [x, t.fromMm],
    [x, t.toMm],
    [edgeOf(t.to.side, frame), t.toMm],
  ];
  return polyline(points, strokeOf(t.style));
}

/** Number of what ties, beside a row; a question mark where nobody knows whether it is there. */
function drawLabel(t: RoutedTie, { side }: PlacedRow, y: number, frame: Frame): Svg {
  const label = fitText(t.style === 'unknown' ? `? ${t.label}` : t.label, noteSize, labelMm - 1);
  const edge = edgeOf(side, frame);
  const x = side === 'left' ? edge + 0.7 : edge - 0.7 - textWidth(label, noteSize);
  return text(label, { x, y: y - 0.6, 'font-size': noteSize, fill: ink });
}

function drawBox(box: PlacedBox, frame: Frame): readonly Svg[] {
  const x = leftOf(box.side, frame);
  const width = frame.columnMm - 0.8;
  const outline = { x, y: box.topMm, width, height: box.heightMm, fill: '#ffffff', stroke: ink, 'stroke-width': 0.25 };
  const title = fitText(box.title, nameSize, width - 3);
  const heading =
    box.title === ''
      ? []
      : [
          element('rect', {
            x,
            y: box.topMm,
            width,
            height: titleMm - 0.4,
            fill: '#e9edf0',
            stroke: ink,
            'stroke-width': 0.25,
          }),
          text(title, { x: x + 1.5, y: box.topMm + 3.5, 'font-size': nameSize, 'font-weight': 'bold', fill: ink }),
        ];
  const stems = box.placed.flatMap((r) => drawStem(r, box, frame));
  return [element('rect', outline), ...heading, ...stems, ...box.placed.flatMap((r) => drawRow(r, frame))];
}

function symbolAt(row: PlacedRow, frame: Frame): Point {
  return [leftOf(row.side, frame) + 3 + Math.min(row.indent, deepest) * indentMm, row.topMm + rowMm / 2];
}

/** The bond by which a row hangs on its parent. */
function drawStem(row: PlacedRow, box: PlacedBox, frame: Frame): readonly Svg[] {
  const parent = box.placed.find((r) => r.id === row.parent);
  if (parent === undefined) return [];
  const [px, py] = symbolAt(parent, frame);
  const [x, y] = symbolAt(row, frame);
  return [
    polyline(
      [
        [px, py],
        [px, y],
        [x, y],
      ],
      strokeOf(row.parentStyle),
    ),
  ];
}

function drawRow(row: PlacedRow, frame: Frame): readonly Svg[] {
  const [x, y] = symbolAt(row, frame);
  const right = leftOf(row.side, frame) + frame.columnMm - 2.2;
  const noteAt = right - textWidth(row.note, noteSize);
  const markWidth = row.mark === '' ? 0 : textWidth(row.mark, noteSize) + 3.6;
  const start = x + 2.6 + textWidth(row.number, nameSize) + 1.2;
  const name = fitText(row.name, nameSize, noteAt - markWidth - start - 1.5);
  return [
    symbol(row.symbol, [x, y], 3.4),
    text(row.number, { x: x + 2.6, y: y + 0.95, 'font-size': nameSize, 'font-weight': 'bold', fill: ink }),
    text(name, { x: start, y: y + 0.95, 'font-size': nameSize, fill: ink }),
    ...(row.note === '' ? [] : [text(row.note, { x: noteAt, y: y + 0.8, 'font-size': noteSize, fill: soft })]),
    ...(row.mark === '' ? [] : drawMark(row.mark, [noteAt - markWidth, y])),
  ];
}

/** A filled triangle and the rows of the table of weak points. */
export function drawMark(mark: string, [x, y]: Point): readonly Svg[] {
  return [
    polygon(
      [
        [x, y + 1],
        [x + 1.1, y - 1.1],
        [x + 2.2, y + 1],
      ],
      { fill: ink },
    ),
    text(mark, { x: x + 2.6, y: y + 0.8, 'font-size': noteSize, 'font-weight': 'bold', fill: ink }),
  ];
}
