import { footM } from '../units/unit-table.ts';
import { drawingWords } from '../words/drawing-words.ts';
import { circle, element, line, type Point, polygon, type Svg, text } from './svg.ts';
import { ink } from './symbols.ts';
import { textWidth } from './text-width.ts';

/** North arrow about a point, turned clockwise by the angle from up to north. */
export function northArrow([x, y]: Point, northDeg: number): readonly Svg[] {
  const angle = (northDeg * Math.PI) / 180;
  const at = (along: number, across: number): Point => [
    x + along * Math.sin(angle) + across * Math.cos(angle),
    y - along * Math.cos(angle) + across * Math.sin(angle),
  ];
  const [tx, ty] = at(7.2, 0);
  return [
    circle([x, y], 4.6, { fill: '#ffffff', stroke: ink, 'stroke-width': 0.25 }),
    line(at(-4.6, 0), at(4.6, 0), { stroke: ink, 'stroke-width': 0.3 }),
    polygon([at(4.6, 0), at(-1, 1.6), at(-0.2, 0)], { fill: ink }),
    text(drawingWords.plan.north, {
      x: tx - 1.1,
      y: ty + 1.2,
      'font-size': 3.4,
      'font-weight': 'bold',
      fill: ink,
    }),
  ];
}

const longestBarMm = 48;

/** Two scale bars: metres, and feet so far from it, one under the other unless told. */
export function scaleBars([x, y]: Point, ratio: number, [right, down]: Point = [0, 7.5]): readonly Svg[] {
  return [...scaleBar([x, y], ratio, 1, 'm'), ...scaleBar([x + right, y + down], ratio, footM, 'ft')];
}

function scaleBar([x, y]: Point, ratio: number, unitM: number, unit: string): readonly Svg[] {
  const mmPerUnit = (unitM * 1000) / ratio;
  const length = roundLength(longestBarMm / mmPerUnit);
  const step = (length * mmPerUnit) / 4;
  const pieces = [0, 1, 2, 3].map((i) =>
    element('rect', {
      x: x + i * step,
      y,
      width: step,
      height: 1.4,
      fill: i % 2 === 0 ? ink : '#ffffff',
      stroke: ink,
      'stroke-width': 0.2,
    }),
  );
  const figures = [0, length / 2, length].map((value, i) => {
    const says = i === 2 ? `${value} ${unit}` : String(value);
    const at = x + i * 2 * step;
    return text(says, {
      x: i === 0 ? at : at - textWidth(String(value), 2.4) / 2,
      y: y + 4.2,
      'font-size': 2.4,
      fill: ink,
    });
  });
  return [...pieces, ...figures];
}

/** The greatest of 1, 2, 4, 10, 20, 40 … (and their tenths) that is not greater than the value. */
function roundLength(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  const step = [4, 2, 1].find((s) => s * power <= value * 1.0001) ?? 1;
  return Number((step * power).toPrecision(1));
}
