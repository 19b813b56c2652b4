import type { StudyCondition } from '../study/study.ts';
import { setName } from '../words/code-set-words.ts';
import { pageWords } from '../words/page.ts';
import { type Block, cell, paragraph, row, type Section, subheading, tableIfAny } from './block.ts';
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
  const sets = page.study.codeSets ?? [];
  if (sets.length > 1) return severalSets(page, sets);
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

/** A row for each condition and a column for each set: verdicts of two sets are never made one. */
function severalSets(page: PageContext, sets: readonly string[]): Section {
  const rules = [...new Set(page.study.conditions.map((c) => c.rule))];
  const rows = rules.flatMap((rule) => {
    const all = page.study.conditions.filter((c) => c.rule === rule);
    if (all.every((c) => c.outcome === 'not applicable')) return [];
    return [row(cell(all[0]!.title, rule), ...sets.map((set) => setCell(page, all, set)))];
  });
  const table = tableIfAny({
    id: 'conditions-table',
    caption: words.caption,
    look: 'wide',
    head: [words.condition, ...sets.map(setName)],
    rows,
  });
  return {
    id: 'conditions',
    heading: words.heading,
    blocks: [paragraph(words.intro), ...table, ...notApplicable(page)],
  };
}

function setCell(page: PageContext, all: readonly StudyCondition[], set: string) {
  const isFirst = set === page.study.codeSets?.[0];
  const others = page.study.codeSets?.slice(1) ?? [];
  const found =
    all.find((c) => c.codeSet === set) ??
    (set === 'own' ? undefined : all.find((c) => c.codeSet === 'any' || (isFirst && !others.includes(c.codeSet))));
  if (found === undefined) return cell(words.notAsked);
  const basis = found.basis ?? '';
  // an owner may ask another figure than the title of the row has
  const asked = found.title === all[0]!.title ? [] : [found.title];
  const source = basis !== '' ? basis : hasDocument(found.source) ? clauseName(page, found.source) : '';
  return cell(
    `${signs[found.outcome]} ${words.outcomes[found.outcome]}`,
    ...asked,
    source,
    countText(page, found),
    found.because,
  );
}

/** Those of one reason together, by name alone: nothing here rests on them. */
function notApplicable(page: PageContext): readonly Block[] {
  const alive = new Set(page.study.conditions.filter((c) => c.outcome !== 'not applicable').map((c) => c.rule));
  const rest = page.study.conditions.filter((c) => !alive.has(c.rule));
  if (rest.length === 0) return [];
  const oneEach = rest.filter((c, i) => rest.findIndex((other) => other.rule === c.rule) === i);
  const reasons = [...new Set(oneEach.map((c) => c.because))];
  const items = reasons.map((because) => {
    const own = oneEach.filter((c) => c.because === because);
    return `${because} (${own.map((c) => c.rule).join(', ')})`;
  });
  return [
    subheading(words.notApplicableCaption),
    paragraph(words.notApplicableIntro),
    { is: 'list', ordered: false, items },
  ];
}

function outcomeCell(c: StudyCondition) {
  return cell(`${signs[c.outcome]} ${words.outcomes[c.outcome]}`);
}

function conditionRow(page: PageContext, c: StudyCondition) {
  const family = `${pageWords.findings.family[c.family]}; ${provenanceName(c.source)}`;
  return row(cell(c.title, c.rule), sourceCell(page, c, family), outcomeCell(c), cell(countText(page, c), c.because));
}

/** What is borrowed from abroad says so instead of citing a clause as if it bound. */
function sourceCell(page: PageContext, c: StudyCondition, family: string) {
  if ((c.basis ?? '') !== '') return cell(c.basis!, family);
  return hasDocument(c.source) ? cell(clauseName(page, c.source), family) : cell(family);
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
