import { type Attributes, group, line, type Point, polygon, type Svg } from './svg.ts';
import { soft } from './symbols.ts';

/** What became of a piece from one study to the other. Each has a sign, a stroke and a colour of its own: the colour is never needed. */
export const fates = ['added', 'removed', 'changed', 'same'] as const;
export type Fate = (typeof fates)[number];

/** Before a number or a name. */
export const fateSign: Readonly<Record<Fate, string>> = { added: '+', removed: '×', changed: 'Δ', same: '' };

export const fateInk: Readonly<Record<Fate, string>> = {
  added: '#0b4f6c',
  removed: '#8a1c14',
  changed: '#6b4500',
  same: soft,
};

const pale = '#a9b3bc';
const widths: Readonly<Record<Fate, number>> = { added: 0.75, removed: 0.7, changed: 0.6, same: 0.22 };
const wideMetal = 1.9;

/** Added is a full line, removed dotted, changed dashed, what stayed thin and pale; pipes and fences are wider. */
export function fateStroke(fate: Fate, isWide = false): Attributes {
  const width = widths[fate] * (isWide ? wideMetal : 1);
  const base: Attributes = { stroke: fate === 'same' ? pale : fateInk[fate], 'stroke-width': width };
  if (fate === 'removed') return { ...base, 'stroke-linecap': 'round', 'stroke-dasharray': '0.01 1.5' };
  if (fate === 'changed') return { ...base, 'stroke-dasharray': '3 1.1' };
  return { ...base, 'stroke-linejoin': 'round' };
}

/** The sign as lines about a point, `size` wide, so that no reader's font is asked for it; nothing for what stayed. */
export function drawSign(fate: Fate, [x, y]: Point, size: number): readonly Svg[] {
  if (fate === 'same') return [];
  const r = size / 2;
  const stroke = { stroke: fateInk[fate], 'stroke-width': size * 0.2 };
  if (fate === 'changed') {
    const corners: readonly Point[] = [
      [x, y - r],
      [x + r, y + r * 0.8],
      [x - r, y + r * 0.8],
    ];
    return [polygon(corners, { fill: '#ffffff', ...stroke })];
  }
  const s = fate === 'added' ? r : r * 0.8;
  const arms: readonly (readonly [Point, Point])[] =
    fate === 'added'
      ? [
          [
            [x - s, y],
            [x + s, y],
          ],
          [
            [x, y - s],
            [x, y + s],
          ],
        ]
      : [
          [
            [x - s, y - s],
            [x + s, y + s],
          ],
          [
            [x - s, y + s],
            [x + s, y - s],
          ],
        ];
  return [
    group(
      stroke,
      arms.map(([a, b]) => line(a, b, {})),
    ),
  ];
}
