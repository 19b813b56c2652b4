import type { Severity, StudyFinding } from '../../study/study.ts';
import type { Remaining } from '../work.ts';

/**
 * How many findings stand: neither folded under another nor agreed to. What several sets of conditions ask alike at one
 * place counts once, by the worst of them.
 */
export function remainingOf(findings: readonly StudyFinding[]): Remaining {
  const standing = findings.filter((f) => f.under === null && f.agreed === null);
  const wrong = worstByPlace(standing.filter((f) => f.outcome === 'not met'));
  const count = (severity: Severity) => wrong.filter((s) => s === severity).length;
  const doubts = standing.filter((f) => f.outcome === 'cannot tell').map(placeOf);
  return {
    hazards: count('hazard'),
    defects: count('defect'),
    advices: count('advice'),
    cannotTell: new Set(doubts).size,
  };
}

const severities: readonly Severity[] = ['hazard', 'defect', 'advice'];

/** 0: hazard, 1: defect, 2: advice. */
export function rankOf({ severity }: Pick<StudyFinding, 'severity'>): number {
  return severities.indexOf(severity);
}

function worstByPlace(findings: readonly StudyFinding[]): readonly Severity[] {
  const worst = new Map<string, number>();
  for (const f of findings) worst.set(placeOf(f), Math.min(worst.get(placeOf(f)) ?? rankOf(f), rankOf(f)));
  return [...worst.values()].map((rank) => severities[rank]!);
}

/** The condition and the places that it was asked at, whichever set asked. */
function placeOf({ rule, at }: StudyFinding): string {
  return `${rule}:${at.join('+')}`;
}

/** Which of two is worse: hazards, then defects; positive where the first is. Advice does not count. */
export function compareDanger(a: Remaining, b: Remaining): number {
  return a.hazards - b.hazards || a.defects - b.defects;
}
