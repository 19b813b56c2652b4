import type { StudyFinding } from '../study/study.ts';

/** Findings that are not met and that nobody agreed to; those folded under another are in. */
export function wrongOf(findings: readonly StudyFinding[]): readonly StudyFinding[] {
  return findings.filter((f) => f.outcome === 'not met' && f.agreed === null);
}
