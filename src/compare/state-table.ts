/**
 * One site in several of its states: every answer in each, and one table of what differs between them. Made of the studies
 * alone; base SI units with the unit in the key; states in the order asked for, rows in a total order.
 */

import type { Bounded, Outcome, Severity, Study } from '../study/study.ts';
import type { Interval } from '../units/interval.ts';
import type { ComparedHead, FindingCounts, ReachRow, WeakPoint } from './comparison.ts';

export type StateGap = NonNullable<Study['gaps']>[number];

/** The answers in one state. */
export interface StateColumn {
  readonly id: string;
  readonly says: string | null;
  readonly ground: { readonly frozen: string; readonly dry: string; readonly wet: string } | null;
  readonly lost: readonly string[];
  readonly set: Readonly<Record<string, string>>;
  readonly counts: FindingCounts;
  /** null: nobody knows where the service is. */
  readonly unbondedElectrodes: readonly string[] | null;
  readonly perhapsUnbonded: readonly string[];
  readonly groups: number;
  readonly earthOhm: Bounded | null;
  /** What still reaches each box: an opening takes its own path away and no other. */
  readonly reach: Study['reach'];
  readonly weakPoints: readonly WeakPoint[];
  readonly gaps: readonly StateGap[];
}

/** One thing that is not the same in all states; `cells` in the order of the columns. */
export type StateRow =
  | {
      readonly what: 'hazards' | 'defects' | 'advices' | 'cannotTell' | 'agreed' | 'groups';
      readonly cells: readonly number[];
    }
  | { readonly what: 'earthOhm'; readonly cells: readonly (Bounded | null)[] }
  | {
      readonly what: 'electrode';
      readonly at: string;
      readonly cells: readonly ('bonded' | 'unbonded' | 'perhaps' | null)[];
    }
  | { readonly what: 'reach'; readonly at: string; readonly cells: readonly ReachRow['gone'][] }
  | { readonly what: 'weakPoint'; readonly at: string; readonly cells: readonly boolean[] }
  | { readonly what: 'gap'; readonly at: string; readonly line: string; readonly cells: readonly (GapCell | null)[] }
  | {
      readonly what: 'finding';
      readonly rule: string;
      readonly severity: Severity;
      readonly title: string;
      readonly at: readonly string[];
      readonly cells: readonly (Outcome | null)[];
    };

export interface GapCell {
  readonly gapM: Interval | null;
  readonly end: StateGap['end'];
  readonly withstandV: Interval | null;
  readonly peakV: number | null;
}

export interface StateTable {
  readonly format: number;
  readonly site: Pick<ComparedHead, 'name' | 'file' | 'checksum' | 'revision' | 'date' | 'region' | 'tool'>;
  readonly columns: readonly StateColumn[];
  /** What differs; [] where nothing does. */
  readonly rows: readonly StateRow[];
}
