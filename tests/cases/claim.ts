/**
 * What a real-life layout must and must not show, as data: each claim is a sentence of the case turned into one
 * question to the study. The layouts are typed from the case text alone; the claims never come from a run.
 */

/** How firmly the practitioners agreed: A the answer stands; B either side may hold, the dissent is noted; C only the expected findings follow. */
export type Grade = 'A' | 'B' | 'C';

export type OutcomeName = 'met' | 'not met' | 'cannot tell';

/** One question to the study. `at` is a part or joint id of the site file. Intervals are [low, high] in SI units. */
export type Question =
  /** A finding of this rule stands (at this place), with this outcome (left out: not met). */
  | {
      readonly finding: string;
      readonly at?: string;
      readonly outcome?: OutcomeName;
      readonly severity?: 'hazard' | 'defect' | 'advice';
    }
  /** These parts are all in one bonded group. */
  | { readonly together: readonly string[] }
  /** These two parts are in different bonded groups. */
  | { readonly apart: readonly [string, string] }
  /** The electrode is certainly outside the service's group. */
  | { readonly unbonded: string }
  /** Whether the electrode is bonded cannot be told. */
  | { readonly perhapsUnbonded: string }
  /** This part carries current between two groups without being a bond. */
  | { readonly bridgedBy: string }
  /** A way through metal from one part to another exists, with these figures. */
  | {
      readonly way: readonly [string, string];
      readonly lengthM?: readonly [number, number];
      readonly inductanceH?: readonly [number, number];
      readonly bendsDeg?: readonly [number, number];
      readonly separatePaths?: number;
    }
  /** There is no way through permanent metal between these two. */
  | { readonly noWay: readonly [string, string] }
  /** The single loss of this joint, conductor or part takes something (these parts) off the service or off earth. */
  | { readonly weakPoint: string; readonly takesOff?: readonly string[] }
  /** In this state (left out: as typed) this line still reaches this box. */
  | { readonly reaches: readonly [part: string, line: string]; readonly state?: string }
  | { readonly reachesNot: readonly [part: string, line: string]; readonly state?: string }
  /** The core (or wires) of the line has no protector anywhere. */
  | { readonly coreUnprotected: string }
  | { readonly coreUndrained: string }
  /** The line crosses this building's wall with no protector on the conductor. */
  | { readonly crossesUnprotected: string; readonly building?: string }
  /** The study's unknowns hold an entry whose path matches. */
  | { readonly unknownAt: RegExp }
  /** The reader asks about this place of the file (a slip of unit, a strange size). */
  | { readonly askedAbout: RegExp }
  /** Resistance to remote earth of an electrode alone, or of the service's group ('site'), overlaps this interval. */
  | { readonly earthOhm: string; readonly within: readonly [number, number] }
  /** Readings of this electrode contradict each other or the soil taken, in a sentence that matches. */
  | { readonly contradicted: string; readonly says: RegExp }
  /** The first findings in order: one of the first `among` findings is of one of these rules. */
  | { readonly first: readonly string[]; readonly among: number };

export interface Claim {
  /** The sentence of the case, in our words. */
  readonly says: string;
  readonly ask: Question;
  /** Ask of the study of this named state instead of the site as typed. */
  readonly inState?: string;
  /** Ask of this variant of the layout (a second site file beside the first). */
  readonly ofFile?: string;
}

export interface Layout {
  readonly id: string;
  readonly title: string;
  /** Public addresses of the report. */
  readonly sources: readonly string[];
  readonly grade: Grade;
  /** Grade B: who disagreed, about what. */
  readonly dissent?: string;
  /** Site files beside this one; the first is the layout as reported. */
  readonly files: readonly string[];
  readonly must: readonly Claim[];
  readonly mustNot: readonly Claim[];
  /** Sentences of the case that nothing asserts yet, and why. */
  readonly notYet: readonly { readonly sentence: string; readonly because: string }[];
}
