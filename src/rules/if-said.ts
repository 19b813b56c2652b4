import type { Verdict } from './rule.ts';

/**
 * For a property that few people type of each of many places: what was said of some, and one doubt for all the others
 * together. One line for the site, however many joints it has, drowns nobody; to leave them out would count as looked at what
 * nobody looked at. `under`: a doubt that the same look settles. Nothing to ask of at all: nothing.
 */
export function ifSaid(
  said: readonly Verdict[],
  unsaid: readonly string[],
  under: { readonly under?: string } = {},
): readonly Verdict[] {
  if (unsaid.length === 0) return said;
  const at = [...new Set(unsaid)].sort();
  return [...said, { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' }, ...under }];
}
