import { changeText, type SiteChange } from '../site/change.ts';
import type { Problem } from '../site/problem.ts';
import { readSite } from '../site/read-site.ts';
import { runStudy, type StudyOptions, type StudyRun } from './run-study.ts';

export type { SiteChange } from '../site/change.ts';

export type Tried = { readonly text: string; readonly run: StudyRun } | { readonly problem: Problem };

/** The study that a site's text would give with changes made to it, and the text with them; else why they cannot be made. */
export function tryChange(text: string, file: string, changes: readonly SiteChange[], options: StudyOptions): Tried {
  const changed = changeText(text, changes);
  if ('problem' in changed) return changed;
  const { site, problems } = readSite(changed.text, file);
  return site === null ? { problem: problems[0]! } : { text: changed.text, run: runStudy(site, options) };
}
