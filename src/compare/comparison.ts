/**
 * A comparison of two studies: what is the same thing before and after, and what became of it. One JSON value, made of the
 * two studies alone; keys are a contract (added freely, never renamed); base SI units with the unit in the key; lists in a
 * total order; no clock. Comparing the other way round gives the mirror image: before and after, new and gone, cleared and
 * new, better and worse, split and joined change places (`unsettled` mirrors what is worse as 'found not met').
 */

import type { Bounded, Study, StudyFinding, StudyPart } from '../study/study.ts';
import type { Interval } from '../units/interval.ts';

export const comparisonFormat = 1;

/** The same thing in both studies; null on the side that has none, or where it is not known. */
export interface Sides<T> {
  readonly before: T;
  readonly after: T;
}

/** `gone`: only before; `new`: only after. */
export type Standing = 'same' | 'changed' | 'gone' | 'new';

export interface ComparedHead {
  readonly name: string | null;
  readonly file: string;
  readonly checksum: string;
  readonly state: Study['state'];
  readonly revision: string | null;
  /** Date of the study, as printed. */
  readonly date: string | null;
  readonly region: string;
  readonly codeSets: readonly string[];
  readonly tool: Study['tool'];
  readonly counts: FindingCounts;
}

/** As in the verdict of a check: folded ones and those agreed to stand are not in the first four. */
export interface FindingCounts {
  readonly hazards: number;
  readonly defects: number;
  readonly advices: number;
  readonly cannotTell: number;
  readonly agreed: number;
}

// Parts

/** id: both call it the same; likeness: place, kind and ties tell that it is the same; cut: see `splits` and `joined`. */
export type MatchedBy = 'id' | 'likeness' | 'cut';

export interface PartPair {
  readonly before: string;
  readonly after: string;
  readonly section: string;
  readonly by: MatchedBy;
}

export interface FieldChange {
  /** As the owner types it: `wire`, `joints`. */
  readonly field: string;
  /** The owner's own words; null: not typed on this side. */
  readonly before: string | null;
  readonly after: string | null;
}

/** A part as a plan and a table need it. */
export type ComparedPart = Pick<
  StudyPart,
  'id' | 'section' | 'kind' | 'present' | 'known' | 'count' | 'positionM' | 'routeM' | 'heightM' | 'typed'
>;

export interface ChangedPart {
  readonly before: ComparedPart;
  readonly after: ComparedPart;
  /** In the order of the fields' names. Other names for parts in them are no change. */
  readonly fields: readonly FieldChange[];
  /** How far it was moved; null: not known on one side. 0: it stands where it stood. */
  readonly movedM: number | null;
  readonly routeChanged: boolean;
  /** came: it was typed as not there and is there now; went: the other way round. */
  readonly presence: 'came' | 'went' | null;
}

export interface ComparedParts {
  /** Every part that stands on both sides, unchanged ones too; by id before, then after. */
  readonly pairs: readonly PartPair[];
  readonly renamed: readonly Sides<string>[];
  readonly changed: readonly ChangedPart[];
  readonly added: readonly ComparedPart[];
  readonly removed: readonly ComparedPart[];
  /** A conductor that was cut: its pieces in order from its `from` to its `to`; in `pairs` it stands with the piece that kept its name, else the first. */
  readonly splits: readonly { readonly before: string; readonly after: readonly string[] }[];
  readonly joined: readonly { readonly before: readonly string[]; readonly after: string }[];
}

// Findings

/**
 * A condition at its places on both sides. `null` on a side: met there, not asked there, or nothing is there to ask it of.
 * `at`: places that it is about here, as ids of after (of before for `cleared`).
 */
export interface FindingChange {
  readonly before: StudyFinding | null;
  readonly after: StudyFinding | null;
  readonly at: readonly string[];
  /** Why it is better or worse; null in other lists. */
  readonly how: FindingHow | null;
  /** Whether it counts: not agreed to stand, and not folded under another one of the same list. */
  readonly counts: boolean;
}

/**
 * severity: another weight of danger; figure: nearer to its limit, or farther from it (`measured`); found not met: it could
 * not be told and is known to fail now (worse only).
 */
export type FindingHow = 'severity' | 'figure' | 'found not met';

/**
 * Not met, or cannot tell: what is met stands nowhere. What was not met and cannot be told now is `unsettled` and neither
 * better nor cleared: knowing less repairs nothing.
 */
export interface ComparedFindings {
  readonly cleared: readonly FindingChange[];
  readonly new: readonly FindingChange[];
  readonly better: readonly FindingChange[];
  readonly worse: readonly FindingChange[];
  readonly unsettled: readonly FindingChange[];
  readonly unchanged: readonly FindingChange[];
  /** Same condition, same places, only agreed to stand on one side and not on the other; they stand in `unchanged` too. */
  readonly agreedOtherwise: readonly FindingChange[];
}

// Figures side by side. Ids of both sides; rows that are the same are in too.

export interface PathRow {
  readonly from: Sides<string | null>;
  readonly aim: 'electrode' | 'service';
  readonly standing: Standing;
  readonly to: Sides<string | null>;
  readonly lengthM: Sides<Interval | null>;
  readonly resistanceOhm: Sides<Interval | null>;
  readonly inductanceH: Sides<Interval | null>;
  readonly separatePaths: Sides<number | null>;
}

export interface OhmRow {
  readonly id: Sides<string | null>;
  readonly standing: Standing;
  readonly ohm: Sides<Bounded | null>;
}

export interface ComparedEarth {
  readonly standing: Standing;
  readonly resistanceOhm: Sides<Bounded | null>;
  readonly withServicesOhm: Sides<Bounded | null>;
  /** Each alone. */
  readonly electrodes: readonly OhmRow[];
}

export interface DifferenceRow {
  readonly a: Sides<string | null>;
  readonly b: Sides<string | null>;
  readonly why: string;
  readonly standing: Standing;
  readonly peakV: Sides<number | null>;
  readonly rangeV: Sides<Bounded | null>;
}

/** Peak currents of a conductor, a support, a line or an electrode. */
export interface CurrentRow {
  readonly id: Sides<string | null>;
  readonly standing: Standing;
  readonly peakA: Sides<number | null>;
  readonly shareOfPeak: Sides<number | null>;
  /** null: nobody knows, or no wire. */
  readonly melts: Sides<boolean | null>;
}

export interface ComparedStrike {
  readonly at: Sides<string | null>;
  readonly peakA: Sides<number | null>;
  readonly wave: Sides<string | null>;
  readonly refused: Sides<string | null>;
  /** false: another point is struck, or another stroke: figures of the two do not compare one to one. */
  readonly sameStroke: boolean;
  readonly differences: readonly DifferenceRow[];
  readonly conductors: readonly CurrentRow[];
  readonly electrodes: readonly CurrentRow[];
}

export type WeakPoint = Study['bonding']['weakPoints'][number];

export interface WeakPointRow {
  readonly at: Sides<string | null>;
  readonly standing: Standing;
  readonly point: Sides<WeakPoint | null>;
}

/** unbonded: known to be outside the group of the service; perhaps: it cannot be told; null: no such electrode, or bonded. */
export interface UnbondedRow {
  readonly id: Sides<string | null>;
  readonly standing: Standing;
  readonly is: Sides<'unbonded' | 'perhaps' | null>;
}

export interface GroupRow {
  readonly id: Sides<string | null>;
  readonly standing: Standing;
  readonly hasService: Sides<boolean | null>;
  readonly electrodes: Sides<readonly string[]>;
  readonly parts: Sides<number>;
  /** Parts that it won, as ids of after, and lost, as ids of before; what is added to or removed from the site too. */
  readonly won: readonly string[];
  readonly lost: readonly string[];
}

export type ReachWay = Study['reach'][number]['by'][number];

/** What still reaches a box. */
export interface ReachRow {
  readonly part: Sides<string | null>;
  readonly standing: Standing;
  readonly by: Sides<readonly ReachWay[]>;
  readonly gone: readonly ReachWay[];
  readonly new: readonly ReachWay[];
}

/** `name` is as a price is looked up under: `rod`, `6 AWG copper`, `exothermic weld`, `gas tube`. */
export interface ComparedMaterial {
  readonly name: string;
  readonly kind: 'conductor' | 'electrode' | 'joint' | 'arrester' | 'bar';
  readonly unit: 'each' | 'm';
  /** Those of known length or number. */
  readonly count: Interval;
  /** Pieces whose length nobody typed: not in `count`. */
  readonly unknown: number;
}

export interface Comparison {
  readonly format: number;
  readonly before: ComparedHead;
  readonly after: ComparedHead;
  /** false: other conditions of code are asked, and findings of code are matched by their rule. */
  readonly sameRegion: boolean;
  /** false: nothing differs but names, file, checksum, revision and date. */
  readonly differs: boolean;
  /** How many findings are new or worse and count; 0: worse in none. */
  readonly worseIn: number;
  /** How many are cleared or better and count. */
  readonly betterIn: number;
  /** Of the site itself: region, service, supply, claims, codes, soil. */
  readonly site: readonly FieldChange[];
  readonly parts: ComparedParts;
  readonly findings: ComparedFindings;
  readonly paths: readonly PathRow[];
  readonly earth: ComparedEarth;
  /** null: neither study holds a strike. */
  readonly strike: ComparedStrike | null;
  readonly weakPoints: readonly WeakPointRow[];
  readonly unbonded: readonly UnbondedRow[];
  readonly groups: readonly GroupRow[];
  readonly reach: readonly ReachRow[];
  readonly materials: { readonly added: readonly ComparedMaterial[]; readonly removed: readonly ComparedMaterial[] };
}
