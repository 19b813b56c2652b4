import { formatQuantity } from '../units/format.ts';
import { pageWords } from '../words/page.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, cell, minor, row, tableIfAny } from './block.ts';
import { figure, partName } from './page-context.ts';
import { protectorBlocks } from './strike-protectors.ts';
import { ampereOf, byGreatest, captionOf, restBlocks, type StrikeView, volt } from './strike-view.ts';

const words = strikeReportWords.joints;
const mostRows = 14;
/** A joint that carries less, or a core that sees less, is not told. */
const leastA = 1;
const leastV = 1;

/** What stands across joints and heats them, which protectors conduct, and what reaches the core of each line. */
export function jointBlocks(view: StrikeView): readonly Block[] {
  const blocks = [...jointTable(view), ...protectorBlocks(view), ...coreTable(view), ...kitTable(view)];
  return blocks.length === 0 ? [] : [minor(words.heading), ...blocks];
}

/** The highest voltage first; those of unknown resistance last, by their current. */
function jointTable(view: StrikeView): readonly Block[] {
  const { page, strike } = view;
  const byCurrent = byGreatest(
    strike.joints,
    (j) => j.peakA,
    (j) => j.id,
  );
  const sorted = [...byCurrent].sort((x, y) => (y.peakV ?? -1) - (x.peakV ?? -1));
  const shown = sorted.filter((j) => j.peakA >= leastA).slice(0, mostRows);
  const energy = (joule: number | null) => formatQuantity(joule, 'energy', 'si') ?? pageWords.page.unknown;
  return [
    ...tableIfAny({
      id: `${view.id}-joints`,
      caption: captionOf(view, words.caption),
      head: [words.joint, words.peak, words.volt, words.energy],
      rows: shown.map((j) =>
        row(
          cell(partName(page, j.id)),
          cell(ampereOf(j.peakA)),
          cell(j.peakV === null ? pageWords.page.unknown : volt(j.peakV)),
          cell(energy(j.energyJ)),
        ),
      ),
    }),
    ...restBlocks(view, sorted.length, shown.length),
  ];
}

function coreTable(view: StrikeView): readonly Block[] {
  const sorted = byGreatest(
    view.strike.cores.filter((c) => c.peakV >= leastV),
    (c) => c.peakV,
    (c) => JSON.stringify([c.line, c.at]),
  );
  const isFired = sorted.some(({ firedV }) => firedV != null);
  return tableIfAny({
    id: `${view.id}-cores`,
    caption: captionOf(view, words.cores),
    head: [words.line, words.at, words.corePeak, ...(isFired ? [words.coreFired] : [])],
    rows: sorted.map((c) =>
      row(
        cell(partName(view.page, c.line)),
        cell(partName(view.page, c.at)),
        cell(volt(c.peakV)),
        ...(isFired ? [cell(c.firedV == null ? '–' : volt(c.firedV))] : []),
      ),
    ),
  });
}

function kitTable(view: StrikeView): readonly Block[] {
  const { page, strike } = view;
  const sorted = byGreatest(
    (strike.kits ?? []).filter((k) => k.peakV >= leastV),
    (k) => k.peakV,
    (k) => JSON.stringify([k.line, k.at]),
  );
  const isTaken = (typed: boolean) => (typed ? null : words.kitTaken);
  return tableIfAny({
    id: `${view.id}-kits`,
    caption: captionOf(view, words.kits),
    head: [words.line, words.at, words.kitLead, words.peak, words.kitPeak],
    rows: sorted
      .slice(0, mostRows)
      .map((k) =>
        row(
          cell(partName(page, k.line)),
          cell(partName(page, k.at)),
          cell(figure(page, k.leadM, 'length'), isTaken(k.isTyped)),
          cell(ampereOf(k.peakA)),
          cell(volt(k.peakV)),
        ),
      ),
  });
}
