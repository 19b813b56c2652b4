/** What the study says of conditions: findings, what to look at, what was agreed to stand, how each condition went. */
import type { Interval } from '../units/interval.ts';

export type Severity = 'hazard' | 'defect' | 'advice';
export type Outcome = 'met' | 'not met' | 'cannot tell';
export type Family = 'code' | 'strike' | 'practice';
export type Provenance = 'read' | 'second-hand' | 'memory' | 'ours';

export interface StudySource {
  readonly document: string;
  readonly edition: string | null;
  readonly clause: string | null;
  readonly provenance: Provenance;
}

export interface StudyFinding {
  /** rule, or rule:place where the rule looks at places. */
  readonly id: string;
  readonly rule: string;
  readonly family: Family;
  readonly codeSet: string;
  readonly severity: Severity;
  readonly outcome: Outcome;
  readonly at: readonly string[];
  /** Id of the finding that this one is folded under; null for one that stands alone. */
  readonly under: string | null;
  readonly title: string;
  readonly because: { readonly key: string; readonly values: Readonly<Record<string, unknown>>; readonly text: string };
  readonly measured: {
    readonly value: number | Interval;
    readonly unit: string;
    readonly limit: number;
    readonly text: string;
  } | null;
  readonly source: StudySource;
  /** What stands behind it where that is not simply the code of the place; '' or left out. */
  readonly basis?: string;
  /** What puts it right (not met), or what would settle it (cannot tell); '' when met. */
  readonly remedy: string;
  /** The same with `{at}` for its places, of a doubt: two that differ in nothing else are one look. Left out in older studies. */
  readonly asks?: string;
  /** What to bring who goes to look: a key of the words for it; null where it can be told. */
  readonly tool?: string | null;
  /** A change of the file that would put it right, for a planner to try; null where only a person can say. */
  readonly change?: readonly object[] | null;
  /** Set when the owner has agreed to let it stand. */
  readonly agreed: { readonly reason: string | null; readonly by: string | null; readonly date: string | null } | null;
}

/** One thing to go and look at: what, where, with what, and what it settles. */
export interface StudyLook {
  readonly text: string;
  /** What is not known. */
  readonly because: readonly string[];
  readonly at: readonly string[];
  /** Key of the words for what to bring; 'eyes': nothing. */
  readonly tool: string;
  /** Ids of the findings that it settles, and how bad they would be. */
  readonly settles: readonly string[];
  readonly hazards: number;
  readonly defects: number;
  readonly advices: number;
}

/** A finding that somebody agreed to let stand. */
export interface StudyAgreement {
  readonly rule: string;
  readonly at: string | null;
  readonly reason: string | null;
  readonly by: string | null;
  readonly date: string | null;
  /** No finding answers to it: what it was about is gone, or was never there. */
  readonly stale: boolean;
  /** What is to be said about it; '' where nothing is. */
  readonly text: string;
}

export interface StudySetCounts {
  readonly codeSet: string;
  readonly hazards: number;
  readonly defects: number;
  readonly advices: number;
  readonly cannotTell: number;
}

/** One condition of the catalogue as it went on this site: met, not applicable and not looked at included. */
export interface StudyCondition {
  readonly rule: string;
  readonly family: Family;
  readonly codeSet: string;
  readonly severity: Severity;
  readonly title: string;
  readonly source: StudySource;
  readonly outcome: Outcome | 'not applicable' | 'not looked at';
  readonly met: number;
  readonly notMet: number;
  readonly cannotTell: number;
  /** Why not applicable or not looked at; '' otherwise. */
  readonly because: string;
  /** As of a finding. */
  readonly basis?: string;
}
