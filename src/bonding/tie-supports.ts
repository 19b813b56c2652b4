import type { Guy, Support } from '../site/site.ts';
import { type Interval, isExact, subtract } from '../units/interval.ts';
import { addTie, type GraphBuilder, tieOf } from './graph-builder.ts';
import { guyNode, nodeOfPoint, supportPoint } from './node-of-point.ts';
import { supportInductance } from './support-inductance.ts';
import { isMetal, isOnePiece } from './support-metal.ts';
import type { Tie } from './tie.ts';

/** The metal of the supports between the points at which something meets them, base and top included; and their guys. */
export function tieSupports(builder: GraphBuilder): void {
  for (const support of builder.index.site.supports) {
    if (support.present === 'no' || isMetal(support) === 'no') continue;
    supportPoint(builder, support, `${support.id}@base`, { low: 0, high: 0 });
    supportPoint(builder, support, `${support.id}@top`, support.heightM);
    for (const guy of support.guys) tieGuy(builder, support, guy);
    joinPoints(builder, support);
  }
}

/** Base, heights in order, top. A point of which nobody knows the height hangs on the base, so that it hides no known length. */
function joinPoints(builder: GraphBuilder, support: Support): void {
  const base = `${support.id}@base`;
  const points = inOrder(builder, support);
  const isPlaced = (node: string) => rankOf(builder, support, node)[0] !== rankUnknown;
  const placed = points.filter(isPlaced);
  const one = isOnePiece(support);
  const spans = [
    ...placed.slice(1).map((high, i) => [placed[i]!, high] as const),
    ...points.filter((node) => !isPlaced(node)).map((node) => [base, node] as const),
  ];
  for (const [low, high] of spans) {
    const lengthM = spanLength(heightOf(builder, support, low), heightOf(builder, support, high));
    const more: Partial<Tie> = {
      body: 'span',
      lengthM,
      inductanceH: supportInductance(support, lengthM),
      noticed: 'visible',
    };
    if (one.is === 'yes') addTie(builder, low, high, tieOf('metal', support.id, more));
    else addTie(builder, low, high, tieOf('loose-metal', support.id, more));
    const unknown = { is: 'unknown' as const, decidedBy: one.decidedBy };
    if (one.is === 'unknown') addTie(builder, low, high, tieOf('metal', support.id, { ...more, ...unknown }));
  }
}

function inOrder(builder: GraphBuilder, support: Support): readonly string[] {
  return [...(builder.landings.get(support.id) ?? [])].sort((a, b) => {
    const [x, y] = [rankOf(builder, support, a), rankOf(builder, support, b)];
    return x[0] - y[0] || x[1] - y[1] || (a < b ? -1 : 1);
  });
}

const rankUnknown = 2;

function rankOf(builder: GraphBuilder, support: Support, node: string): readonly [number, number] {
  if (node === `${support.id}@base`) return [0, 0];
  if (node === `${support.id}@top`) return [3, 0];
  const height = heightOf(builder, support, node);
  return height === null ? [rankUnknown, 0] : [1, height.low];
}

function heightOf(builder: GraphBuilder, support: Support, node: string): Interval | null {
  if (node === `${support.id}@base`) return { low: 0, high: 0 };
  if (node === `${support.id}@top`) return support.heightM;
  return builder.heights.get(node) ?? null;
}

/** Between two heights of which either may be a range. A point typed above the top is taken at the top. */
function spanLength(low: Interval | null, high: Interval | null): Interval | null {
  if (low === null || high === null) return null;
  const length = subtract(high, low);
  const lowM = Math.max(0, length.low);
  return isExact(low) && isExact(high) ? { low: lowM, high: lowM } : { low: lowM, high: Math.max(0, length.high) };
}

/** A guy of metal conducts in a surge unless insulators part it. It holds the support somewhere: nobody is asked where. */
function tieGuy(builder: GraphBuilder, support: Support, guy: Guy): void {
  if (guy.metal === 'none') return;
  const [upper, lower] = [guyNode(builder, support, guy.id, 'tower')!, guyNode(builder, support, guy.id, 'anchor')!];
  const path = `supports.${support.id}.guys.${guy.id}`;
  const metal = guy.metal === null ? { is: 'unknown' as const, decidedBy: `${path}.metal` } : {};
  const more: Partial<Tie> = { lengthM: null, noticed: 'visible', ...metal };
  supportPoint(builder, support, support.id, null);
  addTie(builder, support.id, upper, tieOf('guy', support.id, more));
  const insulated = guy.insulators === 'unknown' ? { is: 'unknown' as const, decidedBy: `${path}.insulators` } : {};
  if (guy.insulators !== 'yes') {
    addTie(builder, upper, lower, tieOf('guy', support.id, { ...more, body: 'span', ...insulated }));
  }
  const anchor = typeof guy.anchor === 'string' ? anchorNode(builder, guy.anchor, guy.id) : null;
  if (anchor !== null) addTie(builder, lower, anchor, tieOf('guy', support.id, more));
}

/** An anchor that is a part of the site, such as an electrode or another support. */
function anchorNode(builder: GraphBuilder, anchor: string, guy: string): string | null {
  const [part = anchor, place] = anchor.split('@');
  const mark = place === 'base' ? 'base' : null;
  return nodeOfPoint(builder, { text: anchor, part, atM: null, mark, member: null }, guy);
}
