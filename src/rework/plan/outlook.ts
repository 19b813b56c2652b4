import type { Study, StudyFinding } from '../../study/study.ts';
import type { SiteChange } from '../../study/try-change.ts';

/** What a plan asks of a study. */
export interface Outlook {
  readonly findings: readonly StudyFinding[];
  /** Likely resistance to earth of the service's group; null where it cannot be told. */
  readonly earthOhm: number | null;
}

/** A site with changes made to its text; or why they cannot be made. */
export type Tried = (Outlook & { readonly text: string; readonly study: Study }) | { readonly problem: string };

/** Makes changes to a text and works out the study of what it says then. */
export type TryChanges = (text: string, changes: readonly SiteChange[]) => Tried;

/** A quick look at changes that leaves rules out, for many works at a time. */
export interface QuickLook {
  readonly tryChanges: TryChanges;
  /** Rules that it does not ask. */
  readonly leavesOut: ReadonlySet<string>;
  /** Likely resistance to earth at the service with changes that only add wires; null: it cannot be had without all else. */
  readonly earthOhm: (text: string, changes: readonly SiteChange[]) => number | null;
}

/** What a plan asks of a study that is there already; the resistance is worked out when it is read. */
export function outlookOf(study: Study): Outlook {
  return {
    get findings() {
      return study.findings;
    },
    get earthOhm() {
      return study.earth.resistanceOhm?.value ?? null;
    },
  };
}

export function triedOf(text: string, study: Study): Tried {
  const outlook = outlookOf(study);
  return {
    text,
    study,
    get findings() {
      return outlook.findings;
    },
    get earthOhm() {
      return outlook.earthOhm;
    },
  };
}
