import type { Study } from '../study/study.ts';
import type { Attributes } from './svg.ts';
import { ink } from './symbols.ts';

/** How ties look: told apart by their strokes, without colour. */
export const tieStyles = ['bond', 'feeder', 'shield', 'cord', 'other', 'unknown'] as const;
export type TieStyle = (typeof tieStyles)[number];

/** A tie that is not known to be there looks unknown, whatever its kind. */
export function tieStyleOf(tie: Pick<Study['bonding']['ties'][number], 'kind' | 'is'>): TieStyle {
  if (tie.is === 'unknown') return 'unknown';
  if (tie.kind === 'metal') return 'bond';
  return tie.kind === 'feeder' || tie.kind === 'shield' || tie.kind === 'cord' ? tie.kind : 'other';
}

const dashes: Readonly<Record<TieStyle, string>> = {
  bond: '',
  feeder: '6 0.8',
  shield: '2.2 1.2',
  cord: '3 0.9 0.5 0.9',
  other: '0.9 0.9',
  unknown: '0.01 1.2',
};

/** Stroke of a tie; the caller puts a question mark on an unknown one. */
export function strokeOf(style: TieStyle): Attributes {
  const width = style === 'bond' || style === 'feeder' ? 0.5 : style === 'other' ? 0.28 : 0.4;
  const dash: Attributes = dashes[style] === '' ? {} : { 'stroke-dasharray': dashes[style] };
  const cap: Attributes = style === 'unknown' ? { 'stroke-linecap': 'round', 'stroke-width': 0.55 } : {};
  return { stroke: ink, 'stroke-width': width, ...dash, ...cap };
}
