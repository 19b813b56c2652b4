interface Foldable {
  readonly id: string;
  readonly under: string | null;
  /** Left out: not met. */
  readonly outcome?: string;
  /** What somebody agreed to let stand takes in nothing that nobody agreed to. */
  readonly agreed?: object | null;
}

/**
 * One cause, one finding: a finding whose `under` names one that does not stand here stands alone; one that names another
 * folded finding is folded under that one's parent; a chain that closes on itself is opened. What is not agreed to stands
 * alone where its cause is, and what was found stands alone where its cause is met or cannot be told.
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

function parentOf<F extends Foldable>(f: F, byId: ReadonlyMap<string, F>): string | null {
  const seen = new Set([f.id]);
  let parent = f.under === null ? undefined : byId.get(f.under);
  while (parent?.under != null && byId.has(parent.under)) {
    if (seen.has(parent.id)) return null;
    seen.add(parent.id);
    parent = byId.get(parent.under);
  }
  if (parent === undefined || parent.id === f.id) return null;
  return causes(parent, f) ? parent.id : null;
}

function causes(parent: Foldable, f: Foldable): boolean {
  if (parent.agreed != null && f.agreed == null) return false;
  return parent.outcome !== 'cannot tell' || f.outcome === 'cannot tell';
}
