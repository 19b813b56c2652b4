import type { Comparison } from '../compare/comparison.ts';
import { type Union, unionOf } from '../drawing/compare-union.ts';
import { itemNumbers } from '../drawing/item-numbers.ts';
import type { Study } from '../study/study.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { stateName } from './cover.ts';
import { type PageContext, pageContext, sayIn } from './page-context.ts';

/** How a page about two studies speaks: one numbering for both, words and units of the later one. */
export interface CompareContext {
  readonly comparison: Comparison;
  /** Two states of one file, not one site before and after work. */
  readonly areStates: boolean;
  readonly union: Union;
  readonly before: PageContext;
  readonly after: PageContext;
  /** Heads of columns. */
  readonly sides: { readonly before: string; readonly after: string };
}

export function compareContext(
  before: Study,
  after: Study,
  comparison: Comparison,
  sectionIds: readonly string[],
): CompareContext {
  const union = unionOf(before, after, comparison.parts);
  const numbers = itemNumbers(union.study);
  const page = { ...pageContext(after, sectionIds), numbers };
  const areStates = before.site.checksum === after.site.checksum && before.state.id !== after.state.id;
  return {
    comparison,
    areStates,
    union,
    before: { ...pageContext(before, sectionIds), speech: page.speech, numbers: numbersBefore(before, union, numbers) },
    after: page,
    sides: areStates ? stateSides(page, before, after) : compareReportWords.sides,
  };
}

/** Numbers of the page by the names that things had before. */
function numbersBefore(
  before: Study,
  { idOfBefore }: Union,
  numbers: ReadonlyMap<string, string>,
): ReadonlyMap<string, string> {
  const ids = [...before.parts, ...before.guys, ...before.joints].map((p) => p.id);
  return new Map(
    ids.flatMap((id) => {
      const number = numbers.get(idOfBefore(id));
      return number === undefined ? [] : [[id, number] as const];
    }),
  );
}

function stateSides(page: PageContext, before: Study, after: Study): CompareContext['sides'] {
  const words = compareReportWords.sides;
  const short = ({ state }: Study) => (state.id === 'as typed' ? stateName(state) : state.id);
  return {
    before: sayIn(page, words.first, { name: short(before) }),
    after: sayIn(page, words.second, { name: short(after) }),
  };
}
