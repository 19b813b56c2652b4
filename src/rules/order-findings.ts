import { onceFor } from '../units/once-for.ts';
import type { Severity } from './rule.ts';
import type { Finding } from './run-rules.ts';

const outcomes = ['not met', 'cannot tell', 'met'] as const;
/** The gravest first. */
export const severities: readonly Severity[] = ['hazard', 'defect', 'advice'];

type Order = readonly { readonly id: string; readonly first?: true }[];

/**
 * Findings in a total order: what everything else hangs on (`first`), then outcome (not met, cannot tell, met), what is not
 * agreed to before what is, severity, place of the rule in the pack (what undoes everything else stands early), id. `lists`:
 * each of one rule in one code set, alike in all of these but the id, in the order of their ids; none is empty.
 */
export function orderFindings<F extends Finding>(lists: readonly (readonly F[])[], rules: Order): readonly F[] {
  const { order, first } = placesIn(rules);
  const alike = new Map<number, (readonly F[])[]>();
  for (const list of lists) {
    const f = list[0]!;
    const leads = f.outcome !== 'met' && f.agreed === null && first.has(f.rule);
    // what is no rule of the pack (an owner's own limit) stands behind all that are
    const rank = rankOf(f, leads) * (rules.length + 1) + (order.get(f.rule) ?? rules.length);
    const same = alike.get(rank);
    if (same === undefined) alike.set(rank, [list]);
    else same.push(list);
  }
  const ordered: F[] = [];
  for (const [, same] of [...alike].sort(([a], [b]) => a - b)) {
    same.sort((a, b) => byId(a[0]!, b[0]!));
    for (const list of same) ordered.push(...list);
  }
  return ordered;
}

const placesIn = onceFor((rules: Order) => ({
  order: new Map<string, number>(rules.map((r, i) => [r.id, i])),
  first: new Set<string>(rules.filter((r) => r.first).map((r) => r.id)),
}));

/** Place among all in which a finding can stand before its rule is asked after, 0 for the first. */
function rankOf(f: Finding, leads: boolean): number {
  const known = (leads ? 0 : 1) * outcomes.length + outcomes.indexOf(f.outcome);
  return (known * 2 + (f.agreed === null ? 0 : 1)) * severities.length + severities.indexOf(f.severity);
}

function byId(a: Finding, b: Finding): number {
  if (a.id < b.id) return -1;
  return a.id === b.id ? 0 : 1;
}
