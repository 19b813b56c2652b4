import type { StudyPart } from '../study/study.ts';
import { circle, element, group, line, type Point, polygon, polyline, type Svg } from './svg.ts';

export const ink = '#16202a';
export const soft = '#4a5763';
const paper = '#ffffff';

export const symbolNames = [
  'electrode',
  'electrodeGroup',
  'plate',
  'support',
  'antenna',
  'bar',
  'arrester',
  'panel',
  'equipment',
  'joint',
  'metalwork',
  'guyAnchor',
] as const;
export type SymbolName = (typeof symbolNames)[number];

/** Which of our symbols a part has. */
export function symbolOf(part: StudyPart): SymbolName {
  if (part.section === 'electrodes') return electrodeSymbol(part);
  if (part.section === 'equipment') return /panel|meter/.test(part.kind) ? 'panel' : 'equipment';
  return bySection[part.section] ?? 'metalwork';
}

const bySection: Readonly<Record<string, SymbolName>> = {
  supports: 'support',
  antennas: 'antenna',
  bars: 'bar',
  arresters: 'arrester',
  joints: 'joint',
};

function electrodeSymbol(part: StudyPart): SymbolName {
  if (part.kind === 'concrete-encased' || part.kind === 'plate' || part.kind === 'structural steel') return 'plate';
  return part.kind === 'rods' || part.count > 1 ? 'electrodeGroup' : 'electrode';
}

/** A symbol of lines and circles about a point; `size` is its width in millimetres. */
export function symbol(name: SymbolName, at: Point, size: number): Svg {
  const attributes = { fill: paper, stroke: ink, 'stroke-width': size * 0.11 };
  return group(attributes, shapes[name](at, size / 2));
}

type Shape = (at: Point, r: number) => readonly Svg[];

const shapes: Readonly<Record<SymbolName, Shape>> = {
  electrode: ([x, y], r) => [circle([x, y], r, {}), dot([x, y], r * 0.4)],
  electrodeGroup: ([x, y], r) => [
    circle([x, y], r, {}),
    dot([x, y - r * 0.4], r * 0.26),
    dot([x - r * 0.4, y + r * 0.3], r * 0.26),
    dot([x + r * 0.4, y + r * 0.3], r * 0.26),
  ],
  plate: ([x, y], r) => [box([x, y], r * 1.9, r * 1.9), dot([x, y], r * 0.4)],
  support: ([x, y], r) => [
    polygon(
      [
        [x, y - r],
        [x + r, y + r * 0.8],
        [x - r, y + r * 0.8],
      ],
      {},
    ),
    dot([x, y + r * 0.2], r * 0.22),
  ],
  antenna: ([x, y], r) => [
    polyline(
      [
        [x - r * 0.8, y - r],
        [x, y],
        [x + r * 0.8, y - r],
      ],
      {},
    ),
    line([x, y - r], [x, y + r], {}),
  ],
  bar: ([x, y], r) => [box([x, y], r * 2, r), dot([x - r * 0.5, y], r * 0.2), dot([x + r * 0.5, y], r * 0.2)],
  arrester: ([x, y], r) => [
    circle([x, y], r, {}),
    line([x, y - r], [x, y - r * 0.25], {}),
    line([x, y + r * 0.25], [x, y + r], {}),
    line([x - r * 0.5, y - r * 0.25], [x + r * 0.5, y - r * 0.25], {}),
    line([x - r * 0.5, y + r * 0.25], [x + r * 0.5, y + r * 0.25], {}),
  ],
  panel: ([x, y], r) => [
    box([x, y], r * 1.8, r * 1.8),
    line([x - r * 0.9, y + r * 0.9], [x + r * 0.9, y - r * 0.9], {}),
  ],
  equipment: (at, r) => [box(at, r * 1.8, r * 1.8)],
  joint: (at, r) => [circle(at, r * 0.5, {})],
  metalwork: ([x, y], r) => [
    polygon(
      [
        [x, y - r],
        [x + r, y],
        [x, y + r],
        [x - r, y],
      ],
      {},
    ),
  ],
  guyAnchor: ([x, y], r) => [
    polygon(
      [
        [x - r * 0.8, y - r * 0.7],
        [x + r * 0.8, y - r * 0.7],
        [x, y + r * 0.9],
      ],
      {},
    ),
  ],
};

function dot(at: Point, r: number): Svg {
  return circle(at, r, { fill: ink, stroke: 'none' });
}

function box([x, y]: Point, width: number, height: number): Svg {
  return element('rect', { x: x - width / 2, y: y - height / 2, width, height });
}
