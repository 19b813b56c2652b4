import type { StudyPath } from '../study/study.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { cell, paragraph, type Row, row, type Section, tableIfAny } from './block.ts';
import { figure, type PageContext, partName, partNames, sayIn } from './page-context.ts';

const words = scheduleWords.ways;

/** The best way of each part to its nearest electrode and to the service. */
export function waysSection(page: PageContext): Section {
  const head = [words.from, words.to, words.through, words.length, words.figures, words.narrowest, words.separate];
  const rows = page.study.paths.map((p) => wayRow(page, p));
  const table = { id: 'ways-table', look: 'wide' as const, caption: words.caption, head, rows };
  return { id: 'ways', heading: sayIn(page, words.heading), blocks: [intro(page), ...tableIfAny(table)] };
}

function intro(page: PageContext) {
  const none = page.study.paths.length === 0 ? ` ${sayIn(page, words.noWay)}` : '';
  return paragraph(sayIn(page, words.intro) + none);
}

function wayRow(page: PageContext, p: StudyPath): Row {
  // A joint at the end of a wire that is passed goes without saying.
  const between = p.through.filter((id) => id !== p.from && id !== p.to && !id.includes(':'));
  const bends = p.bendsDeg === 0 ? null : figure(page, p.bendsDeg, 'angle');
  return row(
    cell(partName(page, p.from)),
    cell(partName(page, p.to), sayIn(page, words.aim[p.aim]), p.byFeeder ? sayIn(page, words.byFeeder) : null),
    cell(between.length === 0 ? words.direct : partNames(page, between)),
    cell(lengthText(page, p)),
    cell(figure(page, p.resistanceOhm, 'resistance'), figure(page, p.inductanceH, 'inductance'), bends),
    cell(...narrowest(page, p)),
    cell(String(p.separatePaths), strict(page, p)),
  );
}

function lengthText(page: PageContext, p: StudyPath): string {
  return p.lengthM === null
    ? sayIn(page, words.atLeast, { lengthM: p.lengthAtLeastM })
    : figure(page, p.lengthM, 'length');
}

function narrowest(page: PageContext, { weakest }: StudyPath): readonly string[] {
  return weakest === null ? ['–'] : [partName(page, weakest.part), figure(page, weakest.areaM2, 'area')];
}

function strict(page: PageContext, p: StudyPath): string | null {
  return p.separatePathsStrict === p.separatePaths
    ? null
    : sayIn(page, words.separateStrict, { strict: String(p.separatePathsStrict) });
}
