import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { costOf } from '../../../src/rework/cost/cost-of.ts';
import { triedOf } from '../../../src/rework/plan/outlook.ts';
import { planWorks } from '../../../src/rework/plan/plan-works.ts';
import type { WorksPlan } from '../../../src/rework/work.ts';
import { besideSite } from '../../../src/shell/beside-site.ts';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy, type StudyOptions } from '../../../src/study/run-study.ts';
import type { Study } from '../../../src/study/study.ts';
import { newTries } from '../../../src/study/try-change.ts';
import { toEnd } from './tried-site.ts';

export interface PlannedFile {
  readonly plan: WorksPlan;
  /** The study that a check of another text beside the same small files gives. */
  readonly studyOf: (text: string) => Study;
}

/** The plan of a site file as the command makes it, with the works that the program itself proposes. */
export function planOfFile(path: string): PlannedFile {
  const text = readFileSync(path, 'utf8');
  const name = basename(path);
  const { site } = readSite(text, name);
  if (site === null) throw new Error(`${path} cannot be read`);
  const options: StudyOptions = {
    state: null,
    version: 'test',
    checksum: '',
    date: null,
    beside: besideSite(site, path),
  };
  const tries = newTries(name, options);
  const trying = planWorks({
    before: runStudy(site, options).study,
    text,
    candidatesOf,
    costOf,
    tryChanges: (from, changes) => {
      const tried = tries(from, changes);
      return 'problem' in tried ? { problem: tried.problem.key } : triedOf(tried.text, tried.run.study);
    },
    limits: { budget: null, hours: null },
  });
  const studyOf = (of: string) => runStudy(readSite(of, name).site!, options).study;
  return { plan: toEnd(trying), studyOf };
}
