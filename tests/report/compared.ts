import { compareStudies } from '../../src/compare/compare-studies.ts';
import type { Comparison } from '../../src/compare/comparison.ts';
import { compareReportModel } from '../../src/report/compare-report-model.ts';
import { renderHtml, renderStatement } from '../../src/report/render-html.ts';
import { statementModel } from '../../src/report/statement-model.ts';
import type { Study } from '../../src/study/study.ts';
import type { LeaveOut } from '../../src/words/statement-words.ts';
import { studyOfExample } from '../examples/study-of-example.ts';
import { templates } from './page-of.ts';

export interface Compared {
  readonly before: Study;
  readonly after: Study;
  readonly comparison: Comparison;
}

export function compared(before: Study, after: Study): Compared {
  return { before, after, comparison: compareStudies(before, after) };
}

/** Files of a test all have the checksum 0; as files they would not have the same. */
export function asFile(study: Study, checksum: string): Study {
  return { ...study, site: { ...study.site, checksum: checksum.repeat(64).slice(0, 64) } };
}

const exampleStudy = (file: string, checksum: string) => asFile(studyOfExample(`${file}.site.yaml`), checksum);

/** The two examples that have a file before and one after the work. */
export const marlHill = compared(
  exampleStudy('marl-hill/marl-hill', 'a'),
  exampleStudy('marl-hill/marl-hill-after', 'b'),
);
export const twoBuildings = compared(
  exampleStudy('two-buildings/two-buildings', 'c'),
  exampleStudy('two-buildings/two-buildings-after', 'd'),
);

export function comparePageOf({ before, after, comparison }: Compared): string {
  return renderHtml(compareReportModel(before, after, comparison), templates);
}

export function statementOf(input: Compared, leaveOut: readonly LeaveOut[] = []): string {
  return renderStatement(statementModel(input, new Set(leaveOut)), templates);
}
