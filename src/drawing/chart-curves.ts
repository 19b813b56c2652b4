import { circle, element, group, line, type Point, polygon, polyline, type Svg, text } from './svg.ts';
import { ink, soft } from './symbols.ts';
import { fitText } from './text-width.ts';

/** How one curve of a chart is told from the others: by its dash and its markers, never by colour alone. */
export interface CurveLook {
  readonly dash: string;
  readonly marker: Marker;
  readonly colour: string;
}

type Marker = 'circle' | 'square' | 'triangle' | 'diamond' | 'cross' | 'upside';

const looks: readonly CurveLook[] = [
  { dash: '', marker: 'circle', colour: ink },
  { dash: '3 1.2', marker: 'square', colour: '#123f5c' },
  { dash: '0.8 0.9', marker: 'triangle', colour: '#8a1c14' },
  { dash: '4 1 0.8 1', marker: 'diamond', colour: '#6b4500' },
  { dash: '6 1.5', marker: 'cross', colour: ink },
  { dash: '2 0.8 0.6 0.8 0.6 0.8', marker: 'upside', colour: '#123f5c' },
];

/** The look of the nth curve; beyond the sixth they begin again with another marker. */
export function curveLook(place: number): CurveLook {
  const round = Math.floor(place / looks.length);
  const { dash, colour } = looks[place % looks.length]!;
  return { dash, colour, marker: looks[(place + round) % looks.length]!.marker };
}

export function strokeOfCurve({ dash, colour }: CurveLook, width = 0.5) {
  return { stroke: colour, 'stroke-width': width, ...(dash === '' ? {} : { 'stroke-dasharray': dash }) };
}

/** A curve with a marker at each of the points that are told, at most `most` of them evenly spread. */
export function drawCurve(points: readonly Point[], look: CurveLook, most = 8): readonly Svg[] {
  if (points.length === 0) return [];
  const every = Math.max(1, Math.ceil(points.length / most));
  const marked = points.filter((_, i) => i % every === 0);
  return [polyline(points, strokeOfCurve(look)), ...marked.map((p) => drawMarker(p, look))];
}

export function drawMarker([x, y]: Point, { marker, colour }: CurveLook, r = 0.95): Svg {
  const look = { fill: '#ffffff', stroke: colour, 'stroke-width': 0.35 };
  const corner = (dx: number, dy: number): Point => [x + dx * r, y + dy * r];
  if (marker === 'circle') return circle([x, y], r, look);
  if (marker === 'square') return element('rect', { x: x - r, y: y - r, width: 2 * r, height: 2 * r, ...look });
  if (marker === 'triangle') return polygon([corner(0, -1.2), corner(1.15, 0.9), corner(-1.15, 0.9)], look);
  if (marker === 'upside') return polygon([corner(0, 1.2), corner(1.15, -0.9), corner(-1.15, -0.9)], look);
  if (marker === 'diamond') return polygon([corner(0, -1.3), corner(1.3, 0), corner(0, 1.3), corner(-1.3, 0)], look);
  return group(look, [line(corner(-1, -1), corner(1, 1), {}), line(corner(-1, 1), corner(1, -1), {})]);
}

/** A wanted label at the end of a curve. */
export interface EndLabel {
  readonly at: Point;
  readonly says: string;
  readonly look: CurveLook;
}

export const endLabelSize = 2.7;
const rowMm = 3.8;

/** Names at the right of a plot, each with a thread to the end of its curve, moved apart where curves end close together. */
export function drawEndLabels(
  labels: readonly EndLabel[],
  xMm: number,
  widthMm: number,
  [topMm, bottomMm]: readonly [number, number],
) {
  const order = labels.map((l, i) => ({ l, i })).sort((a, b) => a.l.at[1] - b.l.at[1] || a.i - b.i);
  const rows = spread(
    order.map(({ l }) => l.at[1]),
    topMm,
    bottomMm,
  );
  return order.flatMap(({ l }, i): readonly Svg[] => {
    const y = rows[i]!;
    const says = fitText(l.says, endLabelSize, widthMm - 6);
    return [
      line(l.at, [xMm + 2.2, y], { stroke: soft, 'stroke-width': 0.15 }),
      drawMarker([xMm + 3.4, y], l.look),
      text(says, { x: xMm + 5.4, y: y + 0.95, 'font-size': endLabelSize, fill: ink }),
    ];
  });
}

/** Heights at least a row apart, in the same order, as near to the wanted ones as going down and then up leaves them. */
function spread(wanted: readonly number[], topMm: number, bottomMm: number): readonly number[] {
  const rows: number[] = [];
  for (const y of wanted) rows.push(Math.max(y, (rows.at(-1) ?? topMm - rowMm) + rowMm));
  for (let i = rows.length - 1; i >= 0; i--) rows[i] = Math.min(rows[i]!, bottomMm - (rows.length - 1 - i) * rowMm);
  return rows;
}

/** Pale strip between two curves over the same figures. */
export function drawBand(low: readonly Point[], high: readonly Point[], { colour }: CurveLook): Svg {
  return polygon([...low, ...[...high].reverse()], { fill: colour, 'fill-opacity': 0.09, stroke: 'none' });
}

/** Pale with an edge, so that it is seen on a poor print too. */
export const rangeFill = { fill: '#dbe3e9', stroke: '#7d8b97', 'stroke-width': 0.15 } as const;
