import type { StudyFinding } from './study-findings.ts';

/** Findings that are not met and stand under another, by the id of that one, in their order. */
export function foldedUnder(findings: readonly StudyFinding[]): ReadonlyMap<string, readonly StudyFinding[]> {
  const folded = new Map<string, StudyFinding[]>();
  for (const f of findings) {
    if (f.under === null || f.outcome !== 'not met') continue;
    const others = folded.get(f.under);
    if (others === undefined) folded.set(f.under, [f]);
    else others.push(f);
  }
  return folded;
}
