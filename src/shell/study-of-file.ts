import type { Beside } from '../rules/run-rules.ts';
import type { Site } from '../site/site.ts';
import { runStudy } from '../study/run-study.ts';
import type { Study } from '../study/study.ts';
import { besideSite } from './beside-site.ts';
import { exitCode, Stop } from './exit-code.ts';
import { type LoadedSite, loadSite } from './load-site.ts';
import { version } from './version.ts';

export interface StudyAsk {
  readonly state?: string;
  readonly date?: string;
  /** Also what only a page shows: see StudyOptions. */
  readonly detail?: boolean;
}

/** The study of a site file, in the state and with the date that were asked for. */
export function studyOfFile(file: string, ask: StudyAsk): Study {
  return studyOfLoaded(loadSite(file, ask.state ?? null), file, ask);
}

/** The same of a site file that was read already. */
export function studyOfLoaded({ site, checksum }: LoadedSite, file: string, ask: StudyAsk): Study {
  return studyOfSite(site, checksum, ask, besideSite(site, file));
}

/** The same of a site that was read already; a rule that fails is our fault. */
export function studyOfSite(site: Site, checksum: string, ask: StudyAsk, beside: Beside = {}): Study {
  const state = ask.state ?? null;
  const { study, faults } = runStudy(site, {
    state,
    checksum,
    date: ask.date ?? null,
    version,
    beside,
    detail: ask.detail ?? false,
  });
  if (faults.length === 0) return study;
  const first = faults[0]!;
  const trace = first.error instanceof Error ? (first.error.stack ?? first.error.message) : String(first.error);
  throw new Stop(
    exitCode.fault,
    `The rule ${first.rule} failed; this is a fault of evenground, not of your file.\n${trace}`,
  );
}
