import type { StudyStrikeDifference, StudyStrikeFired } from '../study/study-strike.ts';
import { formatQuantity } from '../units/format.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, cell, listCell, paragraph, type Row, row, tableIfAny } from './block.ts';
import { partName, partNames, sayIn } from './page-context.ts';
import { ampereOf, byGreatest, captionOf, endName, type StrikeView, time, volt } from './strike-view.ts';

const words = strikeReportWords.protectors;
/** What is not known, as of a study of an earlier edition. */
const none = '–';
/** A difference that the protectors change by less is not told. */
const leastChange = 0.05;
const mostRows = 14;

/** Which protectors conduct and when, what then passes on to the boxes, and the differences that this changes. */
export function protectorBlocks(view: StrikeView): readonly Block[] {
  const { page, study, strike } = view;
  const may = strike.mayFire ?? [];
  const mayFire = may.length === 0 ? [] : [paragraph(sayIn(page, words.mayFire, { list: partNames(page, may) }))];
  if (strike.fired.length === 0) return study.arresters.length === 0 ? [] : [paragraph(words.noneFired), ...mayFire];
  const sorted = [...strike.fired].sort((x, y) => x.atS - y.atS || (x.arrester < y.arrester ? -1 : 1));
  return [
    ...tableIfAny({
      id: `${view.id}-fired`,
      caption: captionOf(view, words.caption),
      head: [words.protector, words.after, words.across, words.peak, words.energy],
      rows: sorted.map((fired) => firedRow(view, fired)),
    }),
    ...mayFire,
    ...passesTable(view, sorted),
    ...changedTable(view),
  ];
}

function firedRow(
  { page }: StrikeView,
  { arrester, line, atS, levelV, afterV, peakA, energyJ }: StudyStrikeFired,
): Row {
  const on = line == null ? null : sayIn(page, words.on, { line: partName(page, line) });
  const isKnown = levelV !== undefined && afterV !== undefined;
  return row(
    cell(partName(page, arrester), on),
    cell(time(atS)),
    cell(isKnown ? sayIn(page, words.fromTo, { before: volt(levelV), after: volt(afterV) }) : none),
    cell(peakA === undefined ? none : ampereOf(peakA)),
    cell(energyJ === undefined ? none : (formatQuantity(energyJ, 'energy', 'si') ?? none)),
  );
}

function passesTable(view: StrikeView, fired: readonly StudyStrikeFired[]): readonly Block[] {
  const { page } = view;
  return tableIfAny({
    id: `${view.id}-passes`,
    caption: captionOf(view, words.passes),
    head: [words.box, words.behind, words.open, words.before, words.later],
    rows: fired.flatMap(({ arrester, passes }) =>
      passes == null
        ? []
        : [
            row(
              cell(partName(page, passes.at)),
              cell(partName(page, arrester)),
              cell(volt(passes.openV)),
              cell(volt(passes.beforeV)),
              cell(volt(passes.afterV)),
            ),
          ],
    ),
  });
}

function changedTable(view: StrikeView): readonly Block[] {
  const changed = view.strike.differences.filter(
    (d) => d.firedV != null && Math.abs(d.firedV - openV(d)) > leastChange * openV(d),
  );
  const change = (d: StudyStrikeDifference) => Math.abs(d.firedV! - openV(d));
  return tableIfAny({
    id: `${view.id}-changed`,
    caption: captionOf(view, words.changed),
    head: [words.pair, words.openPeak, words.firedPeak],
    rows: byGreatest(changed, change, ({ a, b }) => JSON.stringify([a, b]))
      .slice(0, mostRows)
      .map((d) => row(listCell([endName(view, d.a), otherEnd(view, d)]), cell(volt(openV(d))), cell(volt(d.firedV!)))),
  });
}

/** Both without travel time. */
function openV({ peakV, lumpedV }: StudyStrikeDifference): number {
  return lumpedV ?? peakV;
}

/** Against the street it is the conductor that comes in from there. */
function otherEnd(view: StrikeView, { b, why, by }: StudyStrikeDifference): string {
  if (why !== 'outside' || by === null) return endName(view, b);
  return sayIn(view.page, words.conductorOf, { line: partName(view.page, by) });
}
