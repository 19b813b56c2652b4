import { percent } from '../drawing/chart-names.ts';
import { isDrawable, soundingChart } from '../drawing/sounding-chart.ts';
import type { StudyFitted, StudySoilFit } from '../study/study-earth.ts';
import type { Dimension } from '../units/dimension.ts';
import { soilWords } from '../words/soil-words.ts';
import { type Block, type Cell, cell, paragraph, row, subheading, tableIfAny } from './block.ts';
import { figure, type PageContext, sayIn } from './page-context.ts';

const words = soilWords.fit;
/** Below this a difference has no sign worth telling. */
const traceShare = 1e-3;

/** The layers that fit the four-pin readings, drawn and in tables, with how well they do; [] where nothing was read. */
export function fitBlocks(page: PageContext): readonly Block[] {
  const fit = page.study.earth.soilFit;
  if (fit === null) return [];
  return [
    subheading(words.heading),
    ...summary(page, fit),
    ...chart(page, fit),
    ...layerTable(page, fit),
    ...pointTable(page, fit),
  ];
}

/** The study's own sentences, which say the same and more; where it has none, how many layers fit and how well. */
function summary(page: PageContext, fit: StudySoilFit): readonly Block[] {
  if (fit.text.length > 0) return [{ is: 'list', ordered: false, items: fit.text }];
  return [paragraph(found(page, fit)), ...tried(page, fit)];
}

function found(page: PageContext, { chosen, misfitShare, readings }: StudySoilFit): string {
  if (chosen === null || misfitShare === null) return sayIn(page, words.none, { list: readings });
  return sayIn(page, words.found, { count: chosen, list: readings, misfit: percent(misfitShare) });
}

function tried(page: PageContext, fit: StudySoilFit): readonly Block[] {
  if (fit.tried.length === 0) return [];
  const list = fit.tried.map((t) => sayIn(page, words.triedOne, { count: t.layers, misfit: percent(t.misfitShare) }));
  return [paragraph(sayIn(page, words.tried, { list: list.join('; ') }))];
}

function chart(page: PageContext, fit: StudySoilFit): readonly Block[] {
  if (!fit.points.some(isDrawable)) return [];
  const caption = fit.layers.length === 0 ? words.figureUnfitted : words.figure;
  return [{ is: 'figure', id: 'soil-fit-figure', svg: soundingChart(page.study, fit), caption }];
}

function layerTable(page: PageContext, { layers, tradeOffs }: StudySoilFit): readonly Block[] {
  return tableIfAny({
    id: 'soil-fit-layers',
    caption: words.layersCaption,
    head: [words.layer, words.resistivity, words.thickness],
    rows: layers.map((l, i) =>
      row(
        cell(String(i + 1)),
        fittedCell(page, l.resistivityOhmM, 'resistivity'),
        l.thicknessM === null
          ? cell(words.below)
          : fittedCell(page, l.thicknessM, 'length', settled(page, tradeOffs, i)),
      ),
    ),
  });
}

/** A figure that the readings do not hold to within ten times is no figure, only a range. */
function fittedCell(page: PageContext, f: StudyFitted, dimension: Dimension, more: string | null = null): Cell {
  const range = figure(page, { low: f.low, high: f.high ?? Infinity }, dimension);
  const says = f.resolved ? figure(page, f.value, dimension) : words.notResolved;
  return cell(says, sayIn(page, words.range, { range }), more);
}

/** What is resolved of a layer of which a figure is not. */
function settled(page: PageContext, tradeOffs: StudySoilFit['tradeOffs'], layer: number): string | null {
  const found = tradeOffs.find((t) => t.layer === layer);
  if (found === undefined) return null;
  const { value, low, high } = found.range;
  const [v, from, to] = [value, low, high ?? Infinity].map((f) => String(Number(f.toPrecision(3))));
  const range = sayIn(page, words.settledRange, { value: v!, low: from!, high: to! });
  return sayIn(page, words.settled[found.of], { range });
}

function pointTable(page: PageContext, { points }: StudySoilFit): readonly Block[] {
  return tableIfAny({
    id: 'soil-fit-points',
    caption: words.pointsCaption,
    head: [words.reading, words.spacing, words.measured, words.fitted, words.off],
    rows: points.map((p) =>
      row(
        cell(p.reading),
        cell(figure(page, p.spacingM, 'length')),
        cell(figure(page, p.measuredOhmM, 'resistivity')),
        cell(p.fittedOhmM === null ? '–' : figure(page, p.fittedOhmM, 'resistivity')),
        cell(p.fittedOhmM === null ? '–' : offBy(p.fittedOhmM / p.measuredOhmM - 1)),
      ),
    ),
  });
}

function offBy(share: number): string {
  const size = Math.abs(share);
  const sign = share < 0 ? '−' : '+';
  return size < traceShare ? percent(Math.max(size, Number.MIN_VALUE)) : `${sign}${percent(size)}`;
}
