import type { ElectrodeFacts } from '../../facts/facts.ts';
import type { Verdict } from '../rule.ts';

/**
 * Doubts about rods of which nobody knows the length either: the same look settles both, so they are folded under that
 * one. It is one verdict for all such rods, as the doubts about their length are gathered.
 */
export function underLength(verdicts: readonly Verdict[], rods: readonly ElectrodeFacts[]): readonly Verdict[] {
  const unknown = rods.filter((e) => e.part.lengthM === null).map((e) => e.id);
  if (unknown.length === 0) return verdicts;
  const under = `rod-length-us:${[...unknown].sort().join('+')}`;
  return verdicts.map((v) =>
    v.is === 'cannot tell' && v.at.every((id) => unknown.includes(id)) ? { ...v, under } : v,
  );
}
