import type { Severity } from './rule.ts';
import type { Finding } from './run-rules.ts';

const outcomes = ['not met', 'cannot tell', 'met'] as const;
const severities: readonly Severity[] = ['hazard', 'defect', 'advice'];

/**
 * Findings in a total order: what everything else hangs on (`first`), then outcome (not met, cannot tell, met), what is not
 * agreed to before what is, severity, place of the rule in the pack (what undoes everything else stands early), id.
 */
export function orderFindings<F extends Finding>(
  findings: readonly F[],
  rules: readonly { readonly id: string; readonly first?: true }[],
): readonly F[] {
  const order = new Map<string, number>(rules.map((r, i) => [r.id, i]));
  const first = new Set<string>(rules.filter((r) => r.first).map((r) => r.id));
  const leads = (f: Finding) => f.outcome !== 'met' && f.agreed === null && first.has(f.rule);
  // what is no rule of the pack (an owner's own limit) stands behind all that are
  const place = (f: Finding) => order.get(f.rule) ?? rules.length;
  return [...findings].sort(
    (a, b) =>
      Number(leads(b)) - Number(leads(a)) ||
      outcomes.indexOf(a.outcome) - outcomes.indexOf(b.outcome) ||
      Number(a.agreed !== null) - Number(b.agreed !== null) ||
      severities.indexOf(a.severity) - severities.indexOf(b.severity) ||
      place(a) - place(b) ||
      (a.id < b.id ? -1 : a.id > b.id ? 1 : 0),
  );
}
