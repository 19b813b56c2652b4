import { conditionName, ohmRange, percent } from '../drawing/chart-names.ts';
import { depthChart } from '../drawing/depth-chart.ts';
import { spacingChart } from '../drawing/spacing-chart.ts';
import type { StudyDepthCurve, StudySpacingGain } from '../study/study-earth.ts';
import { formatQuantity } from '../units/format.ts';
import { soilWords } from '../words/soil-words.ts';
import { type Block, cell, type Figure, figures, paragraph, row, subheading, tableIfAny } from './block.ts';
import { figure, type PageContext, partNames, sayIn } from './page-context.ts';

const words = soilWords;
/** Lengths that a table shows. */
const mostRows = 7;

/** Electrodes whose figures are the same stand together. */
interface Alike<T> {
  readonly electrodes: readonly string[];
  readonly of: readonly T[];
}

/**
 * What another length and what a second one would do to an electrode alone: sentences for each that differs, a table, and the
 * charts of both side by side.
 */
export function moreBlocks(page: PageContext): readonly Block[] {
  const curves = alike(page.study.earth.depthCurves.filter((c) => c.points.length > 1));
  const gains = alike(page.study.earth.spacingGains.filter((g) => g.points.length > 1));
  const charts = [...depthFigure(page, curves), ...spacingFigure(page, gains)];
  return [...depthBlocks(page, curves), ...spacingBlocks(page, gains), ...figures(charts)];
}

function depthBlocks(page: PageContext, curves: readonly Alike<StudyDepthCurve>[]): readonly Block[] {
  if (curves.length === 0) return [];
  const sentences = curves.map((a) => paragraph(depthSentence(page, partNames(page, a.electrodes), a.of[0]!)));
  return [subheading(words.depth.heading), ...sentences, ...depthTables(page, curves)];
}

/** One chart of all: the first in each condition, the others as they were worked out. */
function depthFigure(page: PageContext, curves: readonly Alike<StudyDepthCurve>[]): readonly Figure[] {
  if (curves.length === 0) return [];
  const drawn = curves.flatMap((a) => a.of.map((c) => ({ ...c, electrode: a.electrodes.join(', ') })));
  const [first, ...list] = curves.map((a) => partNames(page, a.electrodes));
  const caption = sayIn(page, list.length === 0 ? words.depth.figure : words.depth.figureMore, { first: first!, list });
  return [{ is: 'figure', id: 'soil-depth-figure', svg: depthChart(page.study, drawn), caption }];
}

/** A row for each condition of each electrode, those that were worked out at the same lengths together. */
function depthTables(page: PageContext, curves: readonly Alike<StudyDepthCurve>[]): readonly Block[] {
  const byLengths = new Map<string, Alike<StudyDepthCurve>[]>();
  for (const a of curves) {
    const key = a.of[0]!.points.map((p) => p.lengthM.toFixed(3)).join();
    byLengths.set(key, [...(byLengths.get(key) ?? []), a]);
  }
  return [...byLengths.values()].flatMap((all, i) => {
    const lengths = lengthsOf(all[0]!.of[0]!);
    const rows = all.flatMap(({ electrodes, of }) =>
      of.map((c) => {
        const names = { electrode: partNames(page, electrodes), condition: conditionName(c.condition) };
        const name = all.length === 1 ? names.condition : sayIn(page, words.depth.rowOf, names);
        return row(cell(name), ...lengths.map((lengthM) => cell(ohmAt(c, lengthM))));
      }),
    );
    const list = all.map((a) => partNames(page, a.electrodes)).join('; ');
    return tableIfAny({
      id: `soil-depth-${i + 1}`,
      look: 'wide',
      caption: sayIn(page, words.depth.caption, { list }),
      head: [words.depth.condition, ...lengths.map((lengthM) => figure(page, lengthM, 'length'))],
      rows,
    });
  });
}

/** As it is, at about twice that, and at the greatest length worked out. */
function depthSentence(page: PageContext, list: string, curve: StudyDepthCurve): string {
  const { lengthM, points } = curve;
  const condition = conditionName(curve.condition);
  const own = lengthM === null ? null : nearest(points, (p) => p.lengthM, lengthM);
  const last = points.at(-1)!;
  const others = own === null ? [points[0]!, last] : [nearest(points, (p) => p.lengthM, 2 * own.lengthM), last];
  const told = [...new Set(others)].filter((p) => p !== own);
  const says = told.map((p) => sayIn(page, words.depth.at, { ohm: ohmRange(p.ohm), lengthM: p.lengthM })).join('; ');
  if (own === null) return sayIn(page, words.depth.nowNot, { list, condition, others: says });
  const values = { list, condition, now: ohmRange(own.ohm), lengthM: own.lengthM, others: says };
  return sayIn(page, words.depth.now, values);
}

/** Some of the lengths, the first, the last and its own among them. */
function lengthsOf({ points, lengthM }: StudyDepthCurve): readonly number[] {
  const every = Math.ceil(points.length / mostRows);
  const own = lengthM === null ? null : nearest(points, (p) => p.lengthM, lengthM);
  const last = points.length - 1;
  return points.filter((p, i) => i % every === 0 || i === last || p === own).map((p) => p.lengthM);
}

function ohmAt({ points }: StudyDepthCurve, lengthM: number): string {
  const found = points.find((p) => Math.abs(p.lengthM - lengthM) < 1e-3);
  return found === undefined ? '–' : ohmRange(found.ohm);
}

function spacingBlocks(page: PageContext, gains: readonly Alike<StudySpacingGain>[]): readonly Block[] {
  if (gains.length === 0) return [];
  return [subheading(words.spacing.heading), ...gains.map((g) => paragraph(spacingSentence(page, g)))];
}

/** One chart of all. */
function spacingFigure(page: PageContext, gains: readonly Alike<StudySpacingGain>[]): readonly Figure[] {
  if (gains.length === 0) return [];
  const drawn = gains.map((k) => ({ electrode: k.electrodes.join(', '), points: k.of[0]!.points }));
  const svg = spacingChart(page.study, drawn);
  return [{ is: 'figure', id: 'soil-spacing-figure', svg, caption: words.spacing.figure }];
}

/** At one and at two of its own lengths where that is known, and at the greatest distance worked out. */
function spacingSentence(page: PageContext, { electrodes, of }: Alike<StudySpacingGain>): string {
  const { points } = of[0]!;
  const lengthM = page.study.earth.depthCurves.find((c) => electrodes.includes(c.electrode))?.lengthM ?? null;
  const near = lengthM === null ? [points[0]!] : [1, 2].map((k) => nearest(points, (p) => p.spacingM, k * lengthM));
  const told = [...new Set([...near, points.at(-1)!])];
  const others = told
    .map((p) => sayIn(page, words.spacing.at, { gain: percent(p.gainShare), distanceM: p.spacingM }))
    .join(', ');
  return sayIn(page, words.spacing.gains, { list: partNames(page, electrodes), others });
}

/** What more than two bring: a row for each electrode, about, since only the likely soil was asked. */
export function lineBlocks(page: PageContext): readonly Block[] {
  const lines = page.study.earth.rodLines.filter((l) => l.ohm.length > 1);
  if (lines.length === 0) return [];
  const most = Math.max(...lines.map((l) => l.ohm.length));
  const about = (ohm: number | null | undefined) => {
    const says = formatQuantity(ohm ?? null, 'resistance', 'si', { digits: 2 });
    return says === null ? '–' : sayIn(page, words.lines.about, { ohm: says });
  };
  const counts = Array.from({ length: most }, (_, i) => i);
  const table = tableIfAny({
    id: 'soil-lines',
    caption: words.lines.caption,
    head: [sayIn(page, words.electrodes.electrode), words.lines.apart, ...counts.map((i) => String(i + 1))],
    rows: lines.map((l) =>
      row(
        cell(partNames(page, [l.electrode])),
        cell(figure(page, l.spacingM, 'length')),
        ...counts.map((i) => cell(about(l.ohm[i]))),
      ),
    ),
  });
  return [subheading(words.lines.heading), paragraph(words.lines.intro), ...table];
}

/** Groups of electrodes with the same figures, in the order of the study. */
function alike<T extends { readonly electrode: string }>(all: readonly T[]): readonly Alike<T>[] {
  const byElectrode = new Map<string, T[]>();
  for (const one of all) byElectrode.set(one.electrode, [...(byElectrode.get(one.electrode) ?? []), one]);
  const groups = new Map<string, { electrodes: string[]; of: readonly T[] }>();
  for (const [electrode, of] of byElectrode) {
    const key = JSON.stringify(of.map((one) => ({ ...one, electrode: '' })));
    const same = groups.get(key);
    if (same === undefined) groups.set(key, { electrodes: [electrode], of });
    else same.electrodes.push(electrode);
  }
  return [...groups.values()];
}

function nearest<T>(all: readonly T[], pick: (one: T) => number, wanted: number): T {
  return all.reduce((best, one) => (Math.abs(pick(one) - wanted) < Math.abs(pick(best) - wanted) ? one : best));
}
