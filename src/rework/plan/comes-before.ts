import type { Work } from '../work.ts';
import { type EndsOf, landsOn, renewedBy } from './landed-on.ts';

/**
 * Of each work those that come before it where both are done, since they renew a part that it lands on. What needs it, or
 * stands behind it already, does not come before it: no two wait for each other.
 */
export function firstsOf(
  works: readonly Work[],
  bundles: readonly (readonly number[])[],
  endsOf: EndsOf,
): readonly (readonly number[])[] {
  const firsts: number[][] = works.map(() => []);
  const isBehind = (i: number, what: number): boolean =>
    i === what || [...bundles[i]!, ...firsts[i]!].some((n) => n !== i && isBehind(n, what));
  const renewed = works.map(renewedBy);
  for (const [i, work] of works.entries()) {
    const lands = landsOn(work, endsOf);
    for (const [first, parts] of renewed.entries()) {
      if ([...parts].some((part) => lands.has(part)) && !isBehind(first, i)) firsts[i]!.push(first);
    }
  }
  return firsts;
}

/** An order with each work after what it needs and after what renews a part that it lands on; all else stays. */
export function withFirsts(
  order: readonly number[],
  {
    bundles,
    firsts,
  }: { readonly bundles: readonly (readonly number[])[]; readonly firsts: readonly (readonly number[])[] },
): readonly number[] {
  const placed = new Set<number>();
  const place = (i: number) => {
    if (placed.has(i)) return;
    const before = new Set([...bundles[i]!, ...firsts[i]!]);
    for (const n of order) if (n !== i && before.has(n)) place(n);
    placed.add(i);
  };
  for (const i of order) place(i);
  return [...placed];
}
