import type { Svg } from './svg.ts';
import { element, text } from './svg.ts';
import { ink } from './symbols.ts';
import { textWidth } from './text-width.ts';

/** One entry of a legend: how its sample is drawn about a point, 8 mm wide, and what it means. */
export interface LegendEntry {
  readonly sample: (x: number, y: number) => readonly Svg[];
  readonly says: string;
}

const size = 2.5;
const lineMm = 5;
const sampleMm = 11;

/** Entries in columns below a heading; gives the pieces and the height that they need. */
export function drawLegend(heading: string, entries: readonly LegendEntry[], widthMm: number, topMm: number) {
  const widest = Math.max(...entries.map((e) => textWidth(e.says, size))) + sampleMm + 3;
  const columns = Math.max(1, Math.min(4, Math.floor(widthMm / widest)));
  const perColumn = Math.ceil(entries.length / columns);
  const children = [
    element('line', { x1: 0, y1: topMm, x2: widthMm, y2: topMm, stroke: ink, 'stroke-width': 0.25 }),
    text(heading, { x: 0, y: topMm + 4, 'font-size': size + 0.2, 'font-weight': 'bold', fill: ink }),
    ...entries.flatMap((e, i) => {
      const x = Math.floor(i / perColumn) * (widthMm / columns);
      const y = topMm + 8 + (i % perColumn) * lineMm;
      return [...e.sample(x + 4.5, y), text(e.says, { x: x + sampleMm, y: y + 0.9, 'font-size': size, fill: ink })];
    }),
  ];
  return { heightMm: 8 + perColumn * lineMm, children };
}
