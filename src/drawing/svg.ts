import { plainText } from '../words/plain-text.ts';

/** A finished piece of SVG text. Only the functions of this file make one, so nothing in it is unescaped. */
export interface Svg {
  readonly svg: string;
}

export type Attributes = Readonly<Record<string, string | number>>;

/** An element with attributes in the order given and children in order. Numbers are written with at most two decimals. */
export function element(name: string, attributes: Attributes, children: readonly Svg[] = []): Svg {
  const head = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? decimals(value) : escapeText(value)}"`)
    .join('');
  const body = children.map((c) => c.svg).join('');
  return { svg: body === '' ? `<${name}${head}/>` : `<${name}${head}>${body}</${name}>` };
}

/** A `text` element. */
export function text(content: string, attributes: Attributes): Svg {
  return element('text', attributes, [{ svg: escapeText(content) }]);
}

export function group(attributes: Attributes, children: readonly Svg[]): Svg {
  return element('g', attributes, children);
}

/** Straight pieces through points, in drawing units. */
export function polyline(points: readonly Point[], attributes: Attributes): Svg {
  return element('polyline', { points: pointList(points), fill: 'none', ...attributes });
}

export function polygon(points: readonly Point[], attributes: Attributes): Svg {
  return element('polygon', { points: pointList(points), ...attributes });
}

export function line(from: Point, to: Point, attributes: Attributes): Svg {
  return element('line', { x1: from[0], y1: from[1], x2: to[0], y2: to[1], ...attributes });
}

export function circle([cx, cy]: Point, r: number, attributes: Attributes): Svg {
  return element('circle', { cx, cy, r, ...attributes });
}

export type Point = readonly [x: number, y: number];

export interface Sheet {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly title: string;
  readonly description: string;
}

/**
 * A whole drawing, one unit a millimetre on paper, named for those who cannot see it. It holds no ids (several drawings
 * may stand on one page), no style sheet, no script and no reference to anything outside.
 */
export function drawing(sheet: Sheet, children: readonly Svg[]): string {
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    role: 'img',
    'aria-label': sheet.title,
    width: `${decimals(sheet.widthMm)}mm`,
    height: `${decimals(sheet.heightMm)}mm`,
    viewBox: `0 0 ${decimals(sheet.widthMm)} ${decimals(sheet.heightMm)}`,
    'font-family': "'Liberation Sans', Arial, Helvetica, 'Nimbus Sans', 'DejaVu Sans Condensed', sans-serif",
  };
  const named = [
    element('title', {}, [{ svg: escapeText(sheet.title) }]),
    element('desc', {}, [{ svg: escapeText(sheet.description) }]),
  ];
  return element('svg', attributes, [...named, ...children]).svg;
}

/** Escaped for text and for attribute values in either kind of quotes. */
export function escapeText(content: string): string {
  return plainText(content).replace(/[&<>"'`={}]/g, (c) => `&#${c.charCodeAt(0)};`);
}

/** At most two decimals, never an exponent, never minus zero. A figure that is not finite is a fault of ours. */
export function decimals(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError('a drawing needs finite figures');
  const rounded = Math.round(value * 100) / 100;
  return String(Object.is(rounded, -0) ? 0 : rounded);
}

function pointList(points: readonly Point[]): string {
  return points.map(([x, y]) => `${decimals(x)},${decimals(y)}`).join(' ');
}
