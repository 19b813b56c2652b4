import type { ComparedHead, Comparison } from '../compare/comparison.ts';
import { setName } from '../words/code-set-words.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { pageWords } from '../words/page.ts';
import { type Block, cell, paragraph, type Row, row, type Section } from './block.ts';
import { type CompareContext, wordingOf } from './compare-context.ts';
import { ohmText } from './compare-figures.ts';
import { countText } from './counts-by-set.ts';
import { sayIn } from './page-context.ts';

const words = compareReportWords.change;
const kinds = ['cleared', 'better', 'new', 'worse', 'unsettled', 'unchanged'] as const;

/** The change in three sentences, and how many findings of each sort. */
export function changeSection(page: CompareContext): Section {
  return {
    id: 'verdict',
    heading: words.heading[wordingOf(page)],
    blocks: [...changeSentences(page).map(paragraph), ...otherRegions(page), byChange(page), bySeverity(page)],
  };
}

/** Findings, figures, what is left. */
export function changeSentences(page: CompareContext): readonly string[] {
  const { comparison, after } = page;
  if (!comparison.differs) return [words.nothing];
  const counts = sayIn(after, words.findings, countsOf(comparison));
  const wording = wordingOf(page);
  const earth = page.areStates ? words.earthStates : wording === 'planned' ? words.earthPlanned : words.earth;
  const was = sayIn(after, earth, {
    before: whole(page, 'before'),
    after: whole(page, 'after'),
    unbonded: sayIn(after, words.unbonded[wording], {
      before: unbonded(comparison, 'before'),
      after: unbonded(comparison, 'after'),
    }),
  });
  const { hazards, defects, advices, cannotTell } = comparison.after.counts;
  const left = {
    hazards: String(hazards),
    defects: String(defects),
    advices: String(advices),
    cannotTell: String(cannotTell),
    worse: worseSentence(page),
  };
  return [words.findingsLead + counts, was, sayIn(after, words.still[wording], left)];
}

function worseSentence({ after, comparison }: CompareContext): string {
  const n = comparison.worseIn;
  if (n === 0) return words.worseInNone;
  return n === 1 ? words.worseInOne : sayIn(after, words.worseIn, { n: String(n) });
}

function countsOf({ findings }: Comparison): Readonly<Record<(typeof kinds)[number], string>> {
  const count = (kind: (typeof kinds)[number]) => String(findings[kind].filter((c) => c.counts).length);
  return {
    cleared: count('cleared'),
    better: count('better'),
    new: count('new'),
    worse: count('worse'),
    unsettled: count('unsettled'),
    unchanged: count('unchanged'),
  };
}

function whole(page: CompareContext, side: 'before' | 'after'): string {
  return ohmText(page.comparison.earth.resistanceOhm[side]);
}

/** How many electrodes are known to be outside, and how many of which it cannot be told. */
export function unbonded({ unbonded: all }: Comparison, side: 'before' | 'after'): string {
  const sure = all.filter((r) => r.is[side] === 'unbonded').length;
  const perhaps = all.filter((r) => r.is[side] === 'perhaps').length;
  return perhaps === 0 ? String(sure) : `${sure} to ${sure + perhaps}`;
}

function otherRegions({ comparison, after }: CompareContext): readonly Block[] {
  if (comparison.sameRegion) return [];
  const sets = (head: ComparedHead) => head.codeSets.map(setName).join(', ') || head.region;
  return [paragraph(sayIn(after, words.regions, { before: sets(comparison.before), after: sets(comparison.after) }))];
}

function byChange(page: CompareContext): Block {
  const counts = countsOf(page.comparison);
  return {
    is: 'table',
    id: 'counts-change',
    look: 'plain',
    caption: sayIn(page.after, words.byChange, { section: page.after.sectionNumber('findings') }),
    head: [words.change, words.count],
    rows: kinds.map((kind) => row(cell(words.kinds[kind]), cell(counts[kind]))),
  };
}

function bySeverity({ before, after, sides }: CompareContext): Block {
  const line = (name: string, key: Parameters<typeof countText>[1]): Row =>
    row(cell(name), cell(countText(before.study, key)), cell(countText(after.study, key)));
  const agreed = ({ study }: CompareContext['before']) => cell(String(study.verdict.agreed));
  return {
    is: 'table',
    id: 'counts-severity',
    look: 'plain',
    caption: words.countsCaption,
    head: [words.severity, sides.before, sides.after],
    rows: [
      line(pageWords.verdict.hazard, 'hazards'),
      line(pageWords.verdict.defect, 'defects'),
      line(pageWords.verdict.advice, 'advices'),
      line(pageWords.verdict.cannotTell, 'cannotTell'),
      row(cell(words.agreed), agreed(before), agreed(after)),
    ],
  };
}
