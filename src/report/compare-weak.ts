import type { WeakPoint, WeakPointRow } from '../compare/comparison.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { cell, listCell, paragraph, type Row, row, type Section, tableIfAny } from './block.ts';
import type { CompareContext } from './compare-context.ts';
import { type PageContext, partName, partNames, sayIn } from './page-context.ts';

const words = compareReportWords.weak;

/** Weak points that are gone, new or weigh otherwise; those that undo the same on both sides share a row. */
export function compareWeakSection(page: CompareContext): Section {
  const all = page.comparison.weakPoints;
  const count = (standing: WeakPointRow['standing']) => String(all.filter((w) => w.standing === standing).length);
  const values = { gone: count('gone'), new: count('new'), same: count('same') };
  const alike = new Map<string, WeakPointRow[]>();
  for (const w of all.filter((one) => one.standing !== 'same')) {
    const key = JSON.stringify([undone(page.before, w.point.before), undone(page.after, w.point.after)]);
    alike.set(key, [...(alike.get(key) ?? []), w]);
  }
  const table = tableIfAny({
    id: 'weak-compare',
    look: 'wide',
    caption: words.caption,
    head: [words.at, page.sides.before, page.sides.after],
    rows: [...alike.values()].map((same) => weakRow(page, same)),
  });
  return {
    id: 'weak',
    heading: words.heading,
    blocks: [paragraph(sayIn(page.after, words.intro, values)), ...table],
  };
}

function weakRow(page: CompareContext, same: readonly WeakPointRow[]): Row {
  const names = same.map((w) =>
    w.at.after === null ? partName(page.before, w.at.before ?? '') : partName(page.after, w.at.after),
  );
  const [first] = same;
  return row(
    cell(names.join(', ')),
    listCell(undone(page.before, first!.point.before)),
    listCell(undone(page.after, first!.point.after)),
  );
}

function undone(page: PageContext, point: WeakPoint | null): readonly string[] {
  if (point === null) return ['–'];
  const line = (template: string, ids: readonly string[]) =>
    ids.length === 0 ? [] : [sayIn(page, template, { list: partNames(page, ids) })];
  return [
    ...line(words.loses.service, point.losesService),
    ...line(words.loses.earth, point.losesEarth),
    ...line(words.loses.electrodes, point.electrodesLost),
    ...(point.certain ? [] : [scheduleWords.weak.perhaps]),
  ];
}
