import type { TieKind } from './tie.ts';

/**
 * Kinds of tie from the strongest to the weakest: permanent metal; metal that nobody means as a bond; what is pulled by
 * hand; cores; what passes static only; what only a surge closes. The order is ours, by what undoes a tie or keeps it from conducting.
 */
const order: readonly TieKind[] = [
  'metal',
  'feeder',
  'case',
  'loose-metal',
  'guy',
  'cord',
  'shield',
  'core',
  'drain',
  'gap',
];

const place = new Map(order.map((kind, i) => [kind, i] as const));

/** The weaker of two kinds: a chain of ties is as good as its weakest. */
export function weaker(a: TieKind, b: TieKind): TieKind {
  return place.get(a)! >= place.get(b)! ? a : b;
}

/** 0 for the strongest kind. */
export function weaknessOf(kind: TieKind): number {
  return place.get(kind)!;
}
