import type { Bonding } from '../bonding/bonding.ts';

interface Symptom {
  readonly id: string;
  readonly codeSet: string;
  readonly under: string | null;
  readonly outcome: string;
  readonly agreed: unknown;
  /** Parts that nothing ties to the service's system. */
  readonly untied: readonly string[];
}

/**
 * One missing bond, one finding: of the findings that are there because one and the same group is not tied, the first in the
 * order given (the worst, and of those the one that undoes most) is the cause of the others. A finding about several groups
 * stands under one only where each of its groups has one that comes before it. Findings of one code set say nothing of those
 * of another; what all sets share ('any') may be the cause of any.
 */
export function underCause<F extends Symptom>(findings: readonly F[], groupOf: () => Bonding['groupOf']): readonly F[] {
  const leads = new Map<string, string>();
  const causeOf = ({ id, codeSet, untied }: F): string | null => {
    const groups = [...new Set(untied.map((part) => groupOf().get(part) ?? part))];
    const keys = groups.map((g) => [`${codeSet} ${g}`, `any ${g}`] as const);
    const causes = keys.map(([own, any]) => leads.get(own) ?? leads.get(any));
    if (causes.every((c) => c !== undefined)) return causes[0] ?? null;
    for (const [own] of keys) if (!leads.has(own)) leads.set(own, id);
    return null;
  };
  return findings.map((f) => {
    if (f.outcome !== 'not met' || f.untied.length === 0 || f.agreed !== null || f.under !== null) return f;
    const under = causeOf(f);
    return under === null ? f : { ...f, under };
  });
}
