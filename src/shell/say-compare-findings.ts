import type { ComparedFindings, Comparison, FindingChange } from '../compare/comparison.ts';
import { compareWords as words } from '../words/compare-words.ts';
import { type ComparePage, findingHead } from './compare-page.ts';
import { bullet, headed, paragraph } from './page-blocks.ts';
import { plain } from './terminal.ts';

/** What is cleared by its title, the graver ones each; what is new and worse with its reason; what is better with both figures. */
export function findingBlocks({ findings }: Comparison, page: ComparePage): readonly string[] {
  return [
    clearedBlock(page, findings.cleared),
    block(page, 'new', findings.new, reason),
    block(page, 'better', findings.better, difference),
    block(page, 'worse', findings.worse, difference),
    block(page, 'unsettled', findings.unsettled, reason),
    headed(
      page,
      words.headings.agreed,
      findings.agreedOtherwise.map((c) => bullet(page, agreement(c, page))),
    ),
  ];
}

type More = (change: FindingChange, page: ComparePage) => readonly string[];

function block(
  page: ComparePage,
  list: Exclude<keyof ComparedFindings, 'unchanged' | 'agreedOtherwise'>,
  changes: readonly FindingChange[],
  more: More,
): string {
  const told = changes.filter((c) => c.counts);
  if (told.length === 0) return '';
  const rest = changes.length - told.length;
  const lines = told.flatMap((c) => [
    paragraph(page, findingHead(page, c), 2, 8),
    ...more(c, page).map((text) => paragraph(page, text, 10)),
  ]);
  const folded = rest === 0 ? [] : [paragraph(page, page.sentence(words.folded, { count: String(rest) }), 2)];
  return headed(page, words.headings[list], [...lines, ...folded]);
}

/** Hazards and defects that are gone, each; advice and doubts by their number. */
function clearedBlock(page: ComparePage, changes: readonly FindingChange[]): string {
  const told = changes.filter((c) => c.counts);
  const isGrave = ({ before }: FindingChange) => before!.outcome === 'not met' && before!.severity !== 'advice';
  const grave = told.filter(isGrave).map((c) => paragraph(page, findingHead(page, c), 2, 8));
  const others = told.length - grave.length;
  const rest = others === 0 ? [] : [paragraph(page, page.sentence(words.lighter, { count: others }), 2)];
  return headed(page, words.headings.cleared, [...grave, ...rest]);
}

function reason({ after, before }: FindingChange): readonly string[] {
  const f = (after ?? before)!;
  return [plain(f.measured === null ? f.because.text : `${f.because.text} ${f.measured.text}.`)];
}

function difference(change: FindingChange, { sentence }: ComparePage): readonly string[] {
  const { before, after, how } = change;
  if (how === 'found not met') return [sentence(words.found), ...reason(change)];
  if (how === 'severity') return [sentence(words.severityBoth, { before: before!.severity, after: after!.severity })];
  return [sentence(words.figureBoth, { before: before!.measured!.text, after: after!.measured!.text })];
}

function agreement({ after, before }: FindingChange, { sentence }: ComparePage): string {
  const template = after!.agreed === null ? words.nowOpen : words.nowAgreed;
  return sentence(template, { title: after?.title ?? before!.title });
}
