import { strikesOf } from '../drawing/strikes-of.ts';
import type { Study } from '../study/study.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, paragraph, type Section, subheading } from './block.ts';
import { figure, type PageContext, partName, sayIn } from './page-context.ts';
import { besideBlocks } from './strike-beside.ts';
import { currentBlocks } from './strike-currents.ts';
import { differenceBlocks, worstBlocks } from './strike-differences.ts';
import { failureBlocks } from './strike-failures.ts';
import { heatBlocks } from './strike-heat.ts';
import { jointBlocks } from './strike-joints.ts';
import { assumedBlocks, limitBlocks, sharedAssumptions } from './strike-limits.ts';
import { strokeBlocks } from './strike-stroke.ts';
import { timeBlocks } from './strike-time.ts';
import type { StrikeView } from './strike-view.ts';

const words = strikeReportWords;

export function hasStrikes(study: Study): boolean {
  return strikesOf(study).length > 0;
}

/** Each strike of the study: what was put in, the volts between things, where the current goes, and where the figures end. */
export function strikeSection(page: PageContext): Section {
  const strikes = strikesOf(page.study);
  const shared = sharedAssumptions(strikes);
  const several = strikes.length > 1;
  const blocks = strikes.flatMap((strike, i) => {
    const mark = several ? String(i + 1) : null;
    return strikeBlocks({ page, study: page.study, strike, mark, id: `strike-${i + 1}` }, shared);
  });
  const limits = limitBlocks(page, strikes, shared);
  return { id: 'strike', heading: words.heading, blocks: [paragraph(sayIn(page, words.intro)), ...blocks, ...limits] };
}

function strikeBlocks(view: StrikeView, shared: readonly string[]): readonly Block[] {
  const { page, strike } = view;
  const { stroke, refused } = strike;
  if (refused !== null) {
    return [subheading(headingOf(view)), paragraph(sayIn(page, words.refused, { reason: refused }))];
  }
  return [
    subheading(headingOf(view)),
    ...worstBlocks(view),
    ...(stroke === null ? [] : strokeBlocks(view, stroke)),
    ...differenceBlocks(view),
    ...currentBlocks(view),
    ...heatBlocks(view),
    ...jointBlocks(view),
    ...besideBlocks(view),
    ...failureBlocks(view),
    ...timeBlocks(view),
    ...assumedBlocks(view, shared),
  ];
}

function headingOf({ page, strike: { at, stroke }, mark }: StrikeView): string {
  const values = { at: partName(page, at), mark: mark === null ? '' : ` ${mark}` };
  if (stroke === null) return sayIn(page, words.atOnly, values);
  return sayIn(page, words.at, { ...values, peakA: figure(page, stroke.peakA, 'current'), wave: stroke.wave });
}
