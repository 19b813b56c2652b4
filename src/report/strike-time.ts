import { strikeChart } from '../drawing/strike-chart.ts';
import { peakOfTrace, strikeTraces } from '../drawing/strike-traces.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, cell, minor, row, tableIfAny } from './block.ts';
import { partName } from './page-context.ts';
import { captionOf, type StrikeView, time, volt } from './strike-view.ts';

const words = strikeReportWords.time;

/** Potentials over time, as curves and as the highest of each. */
export function timeBlocks(view: StrikeView): readonly Block[] {
  const svg = strikeChart(view.study, view.strike);
  if (svg === null) return [];
  const rows = strikeTraces(view.strike).map((t) => {
    const peak = peakOfTrace(t);
    return row(cell(partName(view.page, t.part)), cell(volt(peak.volt)), cell(time(peak.timeS)));
  });
  const head = [words.part, words.peak, words.after];
  return [
    minor(words.heading),
    { is: 'figure', id: `${view.id}-chart`, svg, caption: captionOf(view, words.figure) },
    ...tableIfAny({ id: `${view.id}-times`, caption: captionOf(view, words.caption), head, rows }),
  ];
}
