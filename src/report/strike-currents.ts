import { percent } from '../drawing/chart-names.ts';
import { strikePlan } from '../drawing/strike-plan.ts';
import type { StudyStrikeConductor } from '../study/study-strike.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, cell, minor, paragraph, type Row, row, tableIfAny } from './block.ts';
import { figure, partName, sayIn } from './page-context.ts';
import { ampereOf, byGreatest, captionOf, restBlocks, type StrikeView, someNames, time } from './strike-view.ts';

const words = strikeReportWords.current;
/** Less of the stroke than this is told in one sentence. */
const toldShare = 0.01;
/** The rest stands in the study file. */
const mostRows = 16;

/** The plan of currents, what each piece of metal carries, and what each electrode lets into the soil. */
export function currentBlocks(view: StrikeView): readonly Block[] {
  const { conductors, electrodes } = view.strike;
  if (conductors.length === 0 && electrodes.length === 0) return [];
  return [minor(words.heading), ...planBlocks(view), ...conductorBlocks(view), ...electrodeBlocks(view)];
}

function planBlocks(view: StrikeView): readonly Block[] {
  const { page, study, strike, id } = view;
  const plan = strikePlan(study, strike);
  if (plan === null) return [];
  const list = someNames(view, plan.missing);
  const missing = plan.missing.length === 0 ? [] : [paragraph(sayIn(page, words.missing, { list }))];
  return [{ is: 'figure', id: `${id}-plan`, svg: plan.svg, caption: captionOf(view, words.figure) }, ...missing];
}

function conductorBlocks(view: StrikeView): readonly Block[] {
  const all = byGreatest(
    view.strike.conductors,
    (c) => c.peakA,
    (c) => c.id,
  );
  const told = all.filter((c) => c.shareOfPeak >= toldShare);
  const count = all.length - told.length;
  return [
    ...tableIfAny({
      id: `${view.id}-conductors`,
      caption: captionOf(view, words.caption),
      head: [words.name, words.peak, words.share, words.after, words.action],
      rows: told.slice(0, mostRows).map((c) => conductorRow(view, c)),
    }),
    ...restBlocks(view, told.length, mostRows),
    ...(told.some(isOverWhole) ? [paragraph(words.over)] : []),
    ...(count === 0 ? [] : [paragraph(sayIn(view.page, words.less, { count }))]),
  ];
}

/** Reads as more than 100 per cent. */
function isOverWhole({ shareOfPeak }: StudyStrikeConductor): boolean {
  return shareOfPeak >= 1.005;
}

function conductorRow({ page }: StrikeView, c: StudyStrikeConductor): Row {
  return row(
    cell(partName(page, c.id)),
    cell(ampereOf(c.peakA)),
    cell(percent(c.shareOfPeak)),
    cell(time(c.atS)),
    cell(figure(page, c.actionA2s, 'action')),
  );
}

function electrodeBlocks(view: StrikeView): readonly Block[] {
  const all = byGreatest(
    view.strike.electrodes,
    (e) => e.peakA,
    (e) => e.id,
  );
  const table = tableIfAny({
    id: `${view.id}-electrodes`,
    caption: captionOf(view, words.electrodes),
    head: [sayIn(view.page, words.electrode), words.peak, words.share],
    rows: all
      .slice(0, mostRows)
      .map((e) => row(cell(partName(view.page, e.id)), cell(ampereOf(e.peakA)), cell(percent(e.shareOfPeak)))),
  });
  return [...table, ...restBlocks(view, all.length, mostRows)];
}
