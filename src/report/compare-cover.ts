import type { Study } from '../study/study.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { pageWords } from '../words/page.ts';
import { type CompareContext, notBuilt, wordingOf } from './compare-context.ts';
import { type Cover, cover, type Entry } from './cover.ts';
import { sayIn } from './page-context.ts';

const words = compareReportWords.cover;

/** One title block with both heads: what is alike on both sides stands once, what is not with its side before it. */
export function compareCover(page: CompareContext): Cover {
  const [was, is] = [cover(page.before), cover(page.after)];
  const labels = [...new Set([...is.rows, ...was.rows].map((r) => r.label))];
  const valuesOf = (rows: readonly Entry[], label: string) => rows.find((r) => r.label === label)?.values ?? [];
  const rows = labels.map((label) => ({
    label,
    values: both(page, valuesOf(was.rows, label), valuesOf(is.rows, label)),
  }));
  return {
    ...is,
    kicker: sayIn(page.after, page.areStates ? words.kickerStates : words.kicker[wordingOf(page)]),
    title: title(page.before.study, page.after.study),
    caption: words.caption,
    caution: [is.caution, notBuilt(page)].join(' ').trim(),
    rows,
    record: { label: words.record, values: both(page, was.record.values, is.record.values) },
  };
}

function both(page: CompareContext, before: readonly string[], after: readonly string[]): readonly string[] {
  if (JSON.stringify(before) === JSON.stringify(after)) return after;
  const sided = (side: string, values: readonly string[]) =>
    sayIn(page.after, words.row, { side, value: values.length === 0 ? pageWords.page.notGiven : values.join('; ') });
  return [sided(page.sides.before, before), sided(page.sides.after, after)];
}

function title(before: Study, after: Study): string {
  const names = [before, after].map((s) => s.site.name ?? pageWords.page.unnamed);
  return [...new Set(names)].join(' → ');
}
