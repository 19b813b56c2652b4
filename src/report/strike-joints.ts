import { formatQuantity } from '../units/format.ts';
import { pageWords } from '../words/page.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, cell, minor, paragraph, row, tableIfAny } from './block.ts';
import { partName, sayIn } from './page-context.ts';
import { ampereOf, byGreatest, captionOf, restBlocks, type StrikeView, volt } from './strike-view.ts';

const words = strikeReportWords.joints;
const mostRows = 14;
/** A joint that carries less, or a core that sees less, is not told. */
const leastA = 1;
const leastV = 1;

/** What stands across joints and heats them, which protectors conduct, and what reaches the core of each line. */
export function jointBlocks(view: StrikeView): readonly Block[] {
  const blocks = [...jointTable(view), ...firedBlocks(view), ...coreTable(view)];
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

function firedBlocks({ page, study, strike }: StrikeView): readonly Block[] {
  if (strike.fired.length === 0) return study.arresters.length === 0 ? [] : [paragraph(words.noneFired)];
  const sorted = [...strike.fired].sort((x, y) => x.atS - y.atS || (x.arrester < y.arrester ? -1 : 1));
  const list = sorted.map(({ arrester, atS }) =>
    sayIn(page, words.firedAfter, { arrester: partName(page, arrester), atS }),
  );
  return [paragraph(sayIn(page, words.fired, { list }))];
}

function coreTable(view: StrikeView): readonly Block[] {
  const sorted = byGreatest(
    view.strike.cores.filter((c) => c.peakV >= leastV),
    (c) => c.peakV,
    (c) => JSON.stringify([c.line, c.at]),
  );
  return tableIfAny({
    id: `${view.id}-cores`,
    caption: captionOf(view, words.cores),
    head: [words.line, words.at, words.corePeak],
    rows: sorted.map((c) =>
      row(cell(partName(view.page, c.line)), cell(partName(view.page, c.at)), cell(volt(c.peakV))),
    ),
  });
}
