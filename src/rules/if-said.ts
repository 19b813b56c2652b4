import type { Verdict } from './rule.ts';

/**
 * For a property that few people type: what was said of some places, with a doubt for the others where anybody said it of
 * one; nobody did: not looked at. A file that says nothing of it is not asked about each of its joints.
 */
export function ifSaid(said: readonly Verdict[], unsaid: readonly string[]): readonly Verdict[] {
  if (said.length === 0) return [{ is: 'not looked at', because: { key: 'nobody said' } }];
  const doubts = unsaid.map(
    (id): Verdict => ({ is: 'cannot tell', at: [id], because: { key: 'nobody said' }, settle: { key: 'look' } }),
  );
  return [...said, ...doubts];
}
