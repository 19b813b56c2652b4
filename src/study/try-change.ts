import { earthLook } from '../facts/earth-look.ts';
import { type KnownSite, newChanger, type SiteChange } from '../site/change.ts';
import type { Problem } from '../site/problem.ts';
import { runStudy, type StudyOptions, type StudyRun, strikeRules } from './run-study.ts';

export type { KnownSite, SiteChange } from '../site/change.ts';
export { strikeRules };

export type Tried = { readonly text: string; readonly run: StudyRun } | { readonly problem: Problem };

/** The study that a site's text would give with changes made to it, and the text with them; else why they cannot be made. */
export function tryChange(text: string, file: string, changes: readonly SiteChange[], options: StudyOptions): Tried {
  return newTries(file, options)(text, changes);
}

/** As `tryChange`; with more options for this once. */
export type Tries = (text: string, changes: readonly SiteChange[], once?: Partial<StudyOptions>) => Tried;

/** Tries one change after another, as `tryChange`; what it read lately, or is `known` to have been read, is not read again. */
export function newTries(file: string, options: StudyOptions, known: KnownSite | null = null): Tries {
  const change = newChanger(file, known);
  return (text, changes, once = {}) => {
    const changed = change(text, changes);
    return 'problem' in changed
      ? changed
      : { text: changed.text, run: runStudy(changed.site, { ...options, ...once }) };
  };
}

/**
 * Likely resistance to earth at the service with changes made to a text, where they only add wires that are not in the soil: by
 * an update of what was solved for the text as it is. null: it cannot be had so.
 */
export function newEarthLook(
  file: string,
  state: string | null,
  known: KnownSite | null = null,
): (text: string, changes: readonly SiteChange[]) => number | null {
  const change = newChanger(file, known);
  let base: { readonly text: string; readonly look: ReturnType<typeof earthLook> } | null = null;
  return (text, changes) => {
    if (changes.some((c) => c.is !== 'add' || c.section !== 'conductors')) return null;
    if (base?.text !== text) {
      const own = change(text, []);
      if ('problem' in own) return null;
      base = { text, look: earthLook(own.site, state) };
    }
    const changed = change(text, changes);
    return 'problem' in changed ? null : base.look(changed.site);
  };
}
