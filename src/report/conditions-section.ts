import type { StudyCondition } from '../study/study.ts';
import { pageWords } from '../words/page.ts';
import { type Block, cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { clauseName, hasDocument, type PageContext, provenanceName, sayIn } from './page-context.ts';

const words = pageWords.conditions;

/** A sign beside each word, so that a column can be skimmed without colour. */
const signs: Readonly<Record<StudyCondition['outcome'], string>> = {
  met: '+',
  'not met': '×',
  'cannot tell': '?',
  'not applicable': '–',
  'not looked at': '○',
};

/** Every condition of the catalogue, met ones and those that were not looked at included. */
export function conditionsSection(page: PageContext): Section {
  const applies = page.study.conditions.filter((c) => c.outcome !== 'not applicable');
  const table: readonly Block[] = tableIfAny({
    id: 'conditions-table',
    caption: words.caption,
    look: 'wide',
    head: [words.condition, words.source, words.outcome, words.because],
    rows: applies.map((c) => conditionRow(page, c)),
  });
  const blocks = [paragraph(words.intro), ...table, ...notApplicable(page)];
  return { id: 'conditions', heading: words.heading, blocks };
}

/** Without their sources: nothing here rests on them. */
function notApplicable(page: PageContext): readonly Block[] {
  const rest = page.study.conditions.filter((c) => c.outcome === 'not applicable');
  return tableIfAny({
    id: 'not-applicable-table',
    caption: words.notApplicableCaption,
    head: [words.condition, words.outcome, words.because],
    rows: rest.map((c) => row(cell(c.title, c.rule), outcomeCell(c), cell(c.because))),
  });
}

function outcomeCell(c: StudyCondition) {
  return cell(`${signs[c.outcome]} ${words.outcomes[c.outcome]}`);
}

function conditionRow(page: PageContext, c: StudyCondition) {
  const family = `${pageWords.findings.family[c.family]}; ${provenanceName(c.source)}`;
  return row(
    cell(c.title, c.rule),
    hasDocument(c.source) ? cell(clauseName(page, c.source), family) : cell(family),
    outcomeCell(c),
    cell(countText(page, c), c.because),
  );
}

/** Counts only where a condition was asked at several places. */
function countText(page: PageContext, c: StudyCondition): string {
  if (c.met + c.notMet + c.cannotTell < 2) return '';
  const counts = [
    [words.count.notMet, c.notMet],
    [words.count.cannotTell, c.cannotTell],
    [words.count.met, c.met],
  ] as const;
  return counts
    .filter(([, n]) => n > 0)
    .map(([text, n]) => sayIn(page, text, { n: String(n) }))
    .join(', ');
}
