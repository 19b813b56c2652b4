import type { Comparison, FindingChange } from '../compare/comparison.ts';
import type { StudyFinding } from '../study/study.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { pageWords } from '../words/page.ts';
import { type Block, cell, paragraph, type Row, row, type Section, subheading, tableIfAny } from './block.ts';
import type { CompareContext } from './compare-context.ts';
import { partNames, sayIn } from './page-context.ts';

const words = compareReportWords.findings;
type Kind = Exclude<keyof Comparison['findings'], 'agreedOtherwise'>;

/** What became of each finding: worse and new first, since nobody may miss them. */
export function compareFindingsSection(page: CompareContext): Section {
  const order: readonly Kind[] = ['new', 'worse', 'unsettled', 'cleared', 'better', 'unchanged'];
  return {
    id: 'findings',
    heading: words.heading,
    blocks: [paragraph(words.intro), ...order.flatMap((kind) => listOf(page, kind)), ...agreed(page)],
  };
}

function listOf(page: CompareContext, kind: Kind): readonly Block[] {
  const all = page.comparison.findings[kind];
  const counted = all.filter((c) => c.counts);
  const heading = sayIn(page.after, words.count, { name: words[kind], n: String(counted.length) });
  const others = all.filter((c) => !c.counts).map((c) => titleOf(page, c));
  const note = kind === 'cleared' && counted.length > 0 ? [paragraph(words.clearedNote)] : [];
  return [
    subheading(heading),
    ...(counted.length === 0 ? [paragraph(words.none)] : []),
    ...tableIfAny({
      id: `findings-${kind}`,
      look: 'wide',
      caption: words.captions[kind],
      head: heads[kind],
      rows: counted.map((c) => rows[kind](page, c)),
    }),
    ...note,
    ...(others.length === 0
      ? []
      : [paragraph(sayIn(page.after, words.folded, { list: [...new Set(others)].join('; ') }))]),
  ];
}

const changed = [words.severity, words.finding, words.was, words.is, words.how];
const heads: Readonly<Record<Kind, readonly string[]>> = {
  new: [words.severity, words.finding, words.why, words.remedy],
  worse: changed,
  unsettled: [words.severity, words.finding, words.was, words.remedy],
  cleared: [words.severity, words.finding, words.was],
  better: changed,
  unchanged: [words.severity, words.finding, words.why],
};

const rows: Readonly<Record<Kind, (page: CompareContext, c: FindingChange) => Row>> = {
  new: (page, c) => row(severity(page, c), finding(page, c), cell(why(c.after)), cell(c.after?.remedy ?? '')),
  worse: changedRow,
  unsettled: (page, c) => row(severity(page, c), finding(page, c), cell(why(c.before)), cell(c.after?.remedy ?? '')),
  cleared: (page, c) => row(severity(page, c), finding(page, c), cell(why(c.before))),
  better: changedRow,
  unchanged: (page, c) => row(severity(page, c), finding(page, c), cell(why(c.after))),
};

function changedRow(page: CompareContext, c: FindingChange): Row {
  const how = c.how === null ? '' : words.hows[c.how];
  return row(severity(page, c), finding(page, c), cell(found(c.before)), cell(found(c.after)), cell(how));
}

function severity(page: CompareContext, { before, after }: FindingChange) {
  const says = (f: StudyFinding) => {
    const name = pageWords.verdict[f.severity];
    return f.outcome === 'cannot tell' ? sayIn(page.after, words.cannotTell, { severity: name }) : name;
  };
  const both = [before, after].filter((f) => f !== null).map(says);
  return cell([...new Set(both)].join(' → '));
}

/** Title and places of the side that it is about. */
function finding(page: CompareContext, c: FindingChange) {
  const places = c.after === null ? partNames(page.before, c.before?.at ?? []) : partNames(page.after, c.after.at);
  return cell((c.after ?? c.before)!.title, places);
}

export function titleOf(page: CompareContext, c: FindingChange): string {
  const { text, more } = finding(page, c);
  return more.length === 0 ? text : `${text} (${more.join(', ')})`;
}

function why(f: StudyFinding | null): string {
  return f === null ? '' : [f.because.text, f.measured?.text ?? ''].filter((t) => t !== '').join(' ');
}

/** The figure where there is one, else the reason. */
function found(f: StudyFinding | null): string {
  return f === null ? '' : (f.measured?.text ?? f.because.text);
}

function agreed(page: CompareContext): readonly Block[] {
  const all = page.comparison.findings.agreedOtherwise;
  if (all.length === 0) return [];
  return [
    subheading(sayIn(page.after, words.count, { name: words.agreedOtherwise, n: String(all.length) })),
    { is: 'list', ordered: false, items: all.map((c) => titleOf(page, c)) },
  ];
}
