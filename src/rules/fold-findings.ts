import { severities } from './order-findings.ts';
import type { Severity } from './rule.ts';

interface Foldable {
  readonly id: string;
  readonly under: string | null;
  /** Left out: not met. */
  readonly outcome?: string;
  /** Left out: all alike. */
  readonly severity?: Severity;
  /** What somebody agreed to let stand takes in nothing that nobody agreed to. */
  readonly agreed?: object | null;
}

/**
 * One cause, one finding: a finding whose `under` names one that does not stand here stands alone; one that names another
 * folded finding is folded under that one's parent; a chain that closes on itself is opened. What is not agreed to stands
 * alone where its cause is, what was found where its cause is met or cannot be told, and what is graver than its cause: a
 * hazard under a piece of advice would not be read.
 */
export function foldFindings<F extends Foldable>(findings: readonly F[]): readonly F[] {
  if (findings.every((f) => f.under === null)) return findings;
  const byId = new Map(findings.filter((f) => f.outcome !== 'met').map((f) => [f.id, f]));
  return findings.map((f) => {
    if (f.under === null) return f;
    const under = parentOf(f, byId);
    return under === f.under ? f : { ...f, under };
  });
}

/** Along the chain of causes, from the last to the finding itself: each that the one before does not take in stands alone. */
function parentOf<F extends Foldable>(f: F, byId: ReadonlyMap<string, F>): string | null {
  const chain = new Set([f]);
  for (const { under } of chain) {
    const cause = under === null ? undefined : byId.get(under);
    if (cause === undefined) break;
    if (chain.has(cause)) return null;
    chain.add(cause);
  }
  const parent = [...chain].reduceRight((alone, next) => (causes(alone, next) ? alone : next));
  return parent === f ? null : parent.id;
}

function causes(parent: Foldable, f: Foldable): boolean {
  if (parent.agreed != null && f.agreed == null) return false;
  if (parent.outcome === 'cannot tell') return f.outcome === 'cannot tell';
  return f.outcome === 'cannot tell' || rankOf(parent) <= rankOf(f);
}

function rankOf({ severity }: Foldable): number {
  return severity === undefined ? 0 : severities.indexOf(severity);
}
