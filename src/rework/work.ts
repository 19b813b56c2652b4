/**
 * A work: one job on the site that a person could be sent to do, with the change of the site file that says it was done.
 * What works are made of; how they are found, tried and put in order stands in the files beside this one.
 */
import type { Study, StudyFinding } from '../study/study.ts';
import type { SiteChange } from '../study/try-change.ts';
import type { Interval } from '../units/interval.ts';

export type WorkKind =
  | 'bond'
  | 'second-path'
  | 'close-ring'
  | 'tie-metalwork'
  | 'add-rods'
  | 'deepen-rod'
  | 'replace-joint'
  | 'replace-conductor'
  | 'add-protector'
  | 'move-arrester'
  | 'move-panel'
  | 'move-line'
  | 'put-right';

/** What has to be bought or made; `name` is as a price is looked up under: `rod`, `6 AWG copper`, `exothermic weld`, `gas tube`. */
export interface Material {
  readonly name: string;
  readonly unit: 'each' | 'm';
  readonly count: Interval;
}

/** Where new metal runs, as a contractor is told it. */
export interface WorkRun {
  /** Id of the new or changed conductor or electrode. */
  readonly part: string;
  /** East, north in metres; [] where the file has no places. */
  readonly routeM: readonly (readonly [number, number])[];
  /** null: nobody can tell; the file takes `unknown`. */
  readonly lengthM: Interval | null;
  /** Depth of burial; null for what is not buried. */
  readonly depthM: number | null;
}

export interface Work {
  /** Kind and what it is about, such as `bond:E2-tower-rods`; unique in a list of works, the same for the same site. */
  readonly id: string;
  readonly kind: WorkKind;
  /** Parts of the site that it is about, in order. */
  readonly at: readonly string[];
  /** Ids of the findings that it was proposed for. */
  readonly answers: readonly string[];
  /** The edit of the owner's text that says it was done. */
  readonly changes: readonly SiteChange[];
  /** Ids of works that must be done before it makes sense. */
  readonly needs: readonly string[];
  readonly materials: readonly Material[];
  readonly runs: readonly WorkRun[];
  /** Values for its sentences, by the name that the sentence has for them. */
  readonly values: Readonly<Record<string, unknown>>;
  /** Nobody can reckon what the site would be like: parts that stand in the way. Such a work is told, and never tried. */
  readonly unreckoned?: readonly string[];
}

/** What is not right on a site, as a plan counts it; what the owner agreed to and what is folded under another are not in. */
export interface Remaining {
  readonly hazards: number;
  readonly defects: number;
  readonly advices: number;
  readonly cannotTell: number;
}

/** What a work does, by recomputation. */
export interface WorkEffect {
  readonly before: Remaining;
  readonly after: Remaining;
  /** Findings that are not there any more, by id as they stood before: met, not asked any more, or gone with their part. */
  readonly cleared: readonly StudyFinding[];
  /** Findings that are not found any more because their condition cannot be told there any more, as they stood before. */
  readonly unsettled: readonly StudyFinding[];
  /** Findings that were not there before: a work with one of them is not proposed. */
  readonly appeared: readonly StudyFinding[];
  /** Of the service's group at the service; null where it cannot be told. */
  readonly earthOhm: { readonly before: number | null; readonly after: number | null };
}

/** What it costs: in the owner's money where the file has a price for all of it; always in metres, rods, joints and hours. */
export interface WorkCost {
  /** null: a price is missing. */
  readonly price: Interval | null;
  /** Names of materials that the file has no price for. */
  readonly unpriced: readonly string[];
  readonly conductorM: Interval;
  readonly rods: number;
  readonly joints: number;
  /** By our own stated allowances. */
  readonly hours: Interval;
}

/** A work in its place in the plan. */
export interface Step {
  readonly work: Work;
  readonly cost: WorkCost;
  /** Tried by itself on the site as it is. */
  readonly alone: WorkEffect;
  /** Tried after the steps before it. */
  readonly inTurn: WorkEffect;
}

/** A work that is not in the plan, and why. */
export interface LeftOut {
  readonly work: Work;
  readonly why:
    | 'breaks another'
    | 'changes nothing'
    | 'cannot be written'
    | 'cannot be reckoned'
    | 'over budget'
    | 'over effort'
    | 'brings as much'
    | 'not needed';
  /** Findings that it would bring when it is done alone. */
  readonly brings: readonly StudyFinding[];
  /** The reader's sentence, what it needs, what stands in its way, or the materials that have no price. */
  readonly because: readonly string[];
}

export interface WorksPlan {
  readonly format: 1;
  readonly before: Study;
  /** The study of the improved text, whole. */
  readonly after: Study;
  /** The owner's text with the changes of every step. */
  readonly text: string;
  readonly steps: readonly Step[];
  readonly leftOut: readonly LeftOut[];
  /** How the order was found: every set of works was tried, or the best at each step with exchanges after. */
  readonly searched: 'every set' | 'step by step';
  /** What the order weighs works by. */
  readonly weighedBy: 'price' | 'material';
  readonly limits: { readonly budget: number | null; readonly hours: number | null };
  /**
   * Set on a large site: works were tried several at a time, those together that have nothing in common, what each does was
   * told from that, and all that were chosen were worked out as a whole at the end. `alone` and `inTurn` are put together.
   */
  readonly inBatches?: true;
  /** Stopped by the person before all was tried. */
  readonly stopped: boolean;
}
