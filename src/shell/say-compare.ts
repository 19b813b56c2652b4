import type { ComparedHead, Comparison, FindingChange } from '../compare/comparison.ts';
import { plannedParts } from '../compare/planned-parts.ts';
import { compareWords as words } from '../words/compare-words.ts';
import type { Speech } from '../words/say.ts';
import { termsOf } from '../words/terms.ts';
import { type ComparePage, comparePage } from './compare-page.ts';
import { paragraph } from './page-blocks.ts';
import { figureBlocks } from './say-compare-figures.ts';
import { findingBlocks } from './say-compare-findings.ts';
import { partBlocks } from './say-compare-parts.ts';
import type { Terminal } from './terminal.ts';

/** The terminal's page of a comparison: the change in two lines, findings, figures, parts and material; the count last. */
export function sayCompare(comparison: Comparison, speech: Speech, terminal: Terminal, next: string): string {
  const { before, after } = comparison;
  const page = comparePage(speech, terminal, termsOf(before.region) === termsOf(after.region));
  const blocks = [
    head(comparison, page),
    ...findingBlocks(comparison, page),
    ...figureBlocks(comparison, page),
    ...partBlocks(comparison, page),
    `${verdictOf(comparison, page)} ${next}`.trim(),
  ];
  return `${blocks.filter((text) => text !== '').join('\n\n')}\n`;
}

/** The last line: how many findings are better, and in how many it is worse. */
export function verdictOf({ betterIn, worseIn }: Comparison, { sentence }: Pick<ComparePage, 'sentence'>): string {
  return sentence(words.verdict, { better: betterIn, worse: worseIn });
}

function head(comparison: Comparison, page: ComparePage): string {
  const { before, after } = comparison;
  const { sentence, terminal } = page;
  const site = after.name ?? before.name ?? words.unnamed;
  const title = sentence(words.title, { site, before: side(before, page), after: side(after, page) });
  const lines = [
    comparison.differs ? '' : sentence(words.same),
    sentence(words.lists, listsOf(comparison)),
    sentence(words.counts, countsOf(before, after)),
    ...(comparison.sameRegion ? [] : [sentence(words.regions, { before: before.region, after: after.region })]),
    ...(page.sameWords ? [] : [sentence(words.regionTerms)]),
    ...notBuilt(comparison, page),
  ];
  const text = lines.filter((line) => line !== '').map((line) => paragraph(page, line));
  return [terminal.paint(paragraph(page, title), 'bold'), ...text].join('\n');
}

/** Parts that came or were changed and that nobody has built yet; of two states of one file nothing was built between. */
function notBuilt(comparison: Comparison, { sentence }: ComparePage): readonly string[] {
  if (comparison.before.checksum === comparison.after.checksum) return [];
  const list = plannedParts(comparison);
  return list.length === 0 ? [] : [sentence(words.notBuilt, { count: list.length, list })];
}

function side({ file, state, revision, date }: ComparedHead, { sentence }: ComparePage): string {
  return sentence(words.side, {
    file,
    state: state.id === 'as typed' ? '' : sentence(words.state, { state: state.id }),
    revision: revision === null ? '' : sentence(words.revision, { revision }),
    date: date === null ? '' : sentence(words.date, { date }),
  });
}

/** Those that count: not folded under another, not agreed to stand. */
function listsOf({ findings }: Comparison) {
  const count = (list: readonly FindingChange[]) => list.filter((c) => c.counts).length;
  const { cleared, better, worse, unsettled, unchanged } = findings;
  return {
    cleared: count(cleared),
    new: count(findings.new),
    better: count(better),
    worse: count(worse),
    unsettled: count(unsettled),
    unchanged: count(unchanged),
  };
}

function countsOf(before: ComparedHead, after: ComparedHead) {
  const keys = ['hazards', 'defects', 'advices', 'cannotTell'] as const;
  return Object.fromEntries(
    keys.flatMap((key) => [
      [`${key}Before`, before.counts[key]],
      [`${key}After`, after.counts[key]],
    ]),
  );
}
