import type { Bonding } from '../bonding/bonding.ts';

interface Symptom {
  readonly id: string;
  readonly under: string | null;
  readonly outcome: string;
  readonly agreed: unknown;
  /** Parts that nothing ties to the service's system. */
  readonly untied: readonly string[];
}

/**
 * One missing bond, one finding: of the findings that are there because one and the same group is not tied, the first in the
 * order given (the worst, and of those the one that undoes most) is the cause of the others. A finding about several groups
 * stands under one only where each of its groups has one that comes before it.
 */
export function underCause<F extends Symptom>(findings: readonly F[], groupOf: () => Bonding['groupOf']): readonly F[] {
  const leads = new Map<string, string>();
  return findings.map((f) => {
    if (f.outcome !== 'not met' || f.agreed !== null || f.under !== null || f.untied.length === 0) return f;
    const groups = [...new Set(f.untied.map((part) => groupOf().get(part) ?? part))];
    const causes = groups.map((g) => leads.get(g));
    if (causes.every((c) => c !== undefined)) return { ...f, under: causes[0]! };
    for (const g of groups) if (!leads.has(g)) leads.set(g, f.id);
    return f;
  });
}
