import type { FactName, Facts } from '../facts/facts.ts';
import type { SiteChange } from '../site/change.ts';
import type { Interval } from '../units/interval.ts';
import type { Values } from '../words/say.ts';
import type { RuleId } from './rule-ids.ts';

export type Severity = 'hazard' | 'defect' | 'advice';
export type Family = 'code' | 'strike' | 'practice';
/** A code set asks in its region, 'any' everywhere; 'own' is what an owner's standard asks, and stands in no record. */
export type CodeSet = 'us' | 'ca' | 'iec' | 'uk' | 'au' | 'any' | 'own';

export interface Clause {
  readonly document: string;
  readonly edition: string | null;
  readonly clause: string | null;
  /** read: seen in the text itself; second-hand: restated elsewhere; memory: check against your copy; ours: no source. */
  readonly provenance: 'read' | 'second-hand' | 'memory' | 'ours';
}

/** A sentence by key, with its values; the text is in the words room under the rule's id. */
export interface Because {
  readonly key: string;
  readonly values?: Values;
}

/** What a rule says of one place it looked at. */
export type Verdict =
  | { readonly is: 'not applicable'; readonly because: Because }
  /** The section of the file was not typed at all. */
  | { readonly is: 'not looked at'; readonly because: Because }
  | {
      readonly is: 'met';
      readonly at: readonly string[];
      readonly because: Because;
      readonly measured?: Measured;
      /** What could not be told if an owner's limit asked for more than is measured; left out: it would be not met. */
      readonly below?: { readonly because: Because; readonly settle: Because };
    }
  | {
      readonly is: 'not met';
      readonly at: readonly string[];
      readonly because: Because;
      readonly measured?: Measured;
      /** Differs from the record's where one place is worse or lighter than the rule's usual. */
      readonly severity?: Severity;
      /** Differs from the record's where the clause does not name what was found, and practice asks it. */
      readonly family?: Family;
      /** A finding (rule:place) that causes this one. */
      readonly under?: string;
      /** Parts that nothing ties to the service's system, where that is why: the finding about their group takes this one in. */
      readonly untied?: readonly string[];
      /** What would put it right, as a change of the file that a planner can try; left out where only a person can say. */
      readonly change?: readonly SiteChange[];
    }
  | {
      readonly is: 'cannot tell';
      readonly at: readonly string[];
      readonly because: Because;
      /** What would settle it. */
      readonly settle: Because;
      readonly measured?: Measured;
      readonly under?: string;
    };

/** A figure against its limit. `key` carries the base unit, such as `areaM2`, so that it can be said in both systems. */
export interface Measured {
  readonly key: string;
  readonly value: number | Interval;
  readonly limit: number;
  /** least: the value must be at least the limit; most: at most. */
  readonly sense: 'least' | 'most';
}

/** A threshold of a rule, for the catalogue and for owners who set another; `key` and `sense` as in `Measured`. */
export interface Limit extends Pick<Measured, 'key' | 'sense'> {
  readonly value: number;
  /** What it is a limit of where a rule has several, such as `copper`. */
  readonly of?: string;
}

/** A rule: a record with a small function. Asking for a fact that is not in `needs` is a compile error. */
export interface Rule<N extends FactName = FactName> {
  readonly id: RuleId;
  readonly family: Family;
  readonly severity: Severity;
  /** Regions whose code set holds this rule. */
  readonly codeSets: readonly CodeSet[];
  readonly source: Clause;
  /** Year of the edition of the source that first asked it: where an earlier one is adopted it is not asked. */
  readonly since?: number;
  /** Where its number moved: the clause from an edition on, oldest first; `source.clause` is the newest. */
  readonly clauses?: readonly { readonly from: number; readonly clause: string }[];
  readonly limits?: readonly Limit[];
  /** Everything else hangs on it: its doubt comes before what is certain. */
  readonly first?: true;
  readonly needs: readonly N[];
  readonly check: (facts: Pick<Facts, N>) => readonly Verdict[];
}

/** Keeps the list of needed facts and the argument of `check` in step. */
export function rule<const N extends FactName>(record: Rule<N>): Rule<N> {
  return record;
}

/** Where a verdict is about, as its finding names it after the rule; '' where it says nothing of a place, or of all. */
export function placeOf(v: Verdict): string {
  if (v.is === 'not applicable' || v.is === 'not looked at') return '';
  return v.at.length === 1 ? v.at[0]! : v.at.join('+');
}
