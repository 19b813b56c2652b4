import { percent } from '../drawing/chart-names.ts';
import type { StudyStrike } from '../study/study-strike.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, minor, paragraph, subheading } from './block.ts';
import { figure, type PageContext, partName, sayIn } from './page-context.ts';
import type { StrikeView } from './strike-view.ts';

const words = strikeReportWords.limits;

/** What was taken for this strike alone; what every strike takes stands once, at the end. */
export function assumedBlocks({ strike }: StrikeView, shared: readonly string[]): readonly Block[] {
  const items = strike.assumptions.filter((a) => !shared.includes(a));
  if (items.length === 0) return [];
  return [minor(strikeReportWords.assumed.heading), { is: 'list', ordered: false, items }];
}

/** What every strike that was worked out takes; [] where there is only one. */
export function sharedAssumptions(strikes: readonly StudyStrike[]): readonly string[] {
  const [first, ...others] = strikes.filter((s) => s.refused === null);
  if (first === undefined || others.length === 0) return [];
  return first.assumptions.filter((a) => others.every((o) => o.assumptions.includes(a)));
}

/** How well each was worked out, and where the figures end. Only where there are figures. */
export function limitBlocks(page: PageContext, strikes: readonly StudyStrike[], shared: readonly string[]) {
  const solved = strikes.filter((s) => s.refused === null);
  if (solved.length === 0) return [];
  const taken: readonly Block[] =
    shared.length === 0
      ? []
      : [paragraph(strikeReportWords.assumed.shared), { is: 'list', ordered: false, items: shared }];
  const list: Block = { is: 'list', ordered: false, items: words.list.map((l) => sayIn(page, l)) };
  return [subheading(words.heading), list, ...solved.flatMap((s) => solveBlocks(page, s)), ...taken];
}

function solveBlocks(page: PageContext, { at, solve }: StudyStrike): readonly Block[] {
  if (solve === null) return [];
  const values = {
    at: partName(page, at),
    branches: solve.branches,
    loops: solve.loops,
    steps: solve.steps,
    error: percent(solve.errorShare),
    energy: percent(solve.energyShare),
    longestM: figure(page, solve.longestWayM, 'length'),
    mostM: figure(page, solve.mostWayM, 'length'),
  };
  return [paragraph(sayIn(page, words.solve, values))];
}
