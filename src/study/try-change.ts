import { newChanger, type SiteChange } from '../site/change.ts';
import type { Problem } from '../site/problem.ts';
import { runStudy, type StudyOptions, type StudyRun } from './run-study.ts';

export type { SiteChange } from '../site/change.ts';

export type Tried = { readonly text: string; readonly run: StudyRun } | { readonly problem: Problem };

/** The study that a site's text would give with changes made to it, and the text with them; else why they cannot be made. */
export function tryChange(text: string, file: string, changes: readonly SiteChange[], options: StudyOptions): Tried {
  return newTries(file, options)(text, changes);
}

/** Tries one change after another, as `tryChange`; what it read lately is not read again. */
export function newTries(file: string, options: StudyOptions): (text: string, changes: readonly SiteChange[]) => Tried {
  const change = newChanger(file);
  return (text, changes) => {
    const changed = change(text, changes);
    return 'problem' in changed ? changed : { text: changed.text, run: runStudy(changed.site, options) };
  };
}
