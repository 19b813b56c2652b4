import type { Comparison } from '../compare/comparison.ts';
import { plannedParts } from '../compare/planned-parts.ts';
import { type Union, unionOf } from '../drawing/compare-union.ts';
import { itemNumbers } from '../drawing/item-numbers.ts';
import type { Study } from '../study/study.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { statementWords } from '../words/statement-words.ts';
import { stateName } from './cover.ts';
import { type PageContext, pageContext, partNames, sayIn } from './page-context.ts';

/** How a page about two studies speaks: one numbering for both, words and units of the later one. */
export interface CompareContext {
  readonly comparison: Comparison;
  /** Two states of one file, not one site before and after work. */
  readonly areStates: boolean;
  /** New or changed parts of the later file that nobody has built yet, by id. */
  readonly planned: readonly string[];
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
  const planned = areStates ? [] : plannedParts(comparison);
  const sides = planned.length > 0 ? compareReportWords.sidesPlanned : compareReportWords.sides;
  return {
    comparison,
    areStates,
    planned,
    union,
    before: { ...pageContext(before, sectionIds), speech: page.speech, numbers: numbersBefore(before, union, numbers) },
    after: page,
    sides: areStates ? stateSides(page, before, after) : sides,
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

/** Which wording a page has: for work that was done, or for what is planned as yet. */
export function wordingOf({ planned }: CompareContext): 'left' | 'planned' {
  return planned.length > 0 ? 'planned' : 'left';
}

const mostNotBuilt = 8;

/** For the box of cautions; '' where nothing is planned. */
export function notBuilt({ planned, after }: CompareContext): string {
  if (planned.length === 0) return '';
  const words = statementWords.cover;
  const names = partNames(after, planned.slice(0, mostNotBuilt));
  const more = planned.length - mostNotBuilt;
  const list = more <= 0 ? names : sayIn(after, words.andMore, { list: names, n: String(more) });
  return sayIn(after, words.notBuilt, { n: planned.length, list });
}
