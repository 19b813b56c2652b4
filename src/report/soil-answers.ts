import { conditionName, ohmRange, percent } from '../drawing/chart-names.ts';
import { depthChart } from '../drawing/depth-chart.ts';
import { spacingChart } from '../drawing/spacing-chart.ts';
import type { StudyDepthCurve, StudySpacingGain } from '../study/study-earth.ts';
import { formatQuantity } from '../units/format.ts';
import { soilWords } from '../words/soil-words.ts';
import { type Block, cell, paragraph, row, subheading, tableIfAny } from './block.ts';
import { figure, type PageContext, partNames, sayIn } from './page-context.ts';

const words = soilWords;
/** Lengths that a table shows. */
const mostRows = 7;

/** Electrodes whose figures are the same stand together. */
interface Alike<T> {
  readonly electrodes: readonly string[];
  readonly of: readonly T[];
}

/** What another length would do to an electrode alone: a sentence, a chart and a table for each that differs. */
export function depthBlocks(page: PageContext): readonly Block[] {
  const curves = page.study.earth.depthCurves.filter((c) => c.points.length > 1);
  if (curves.length === 0) return [];
  const blocks = alike(curves).flatMap((a, i) => depthOf(page, a, String(i + 1)));
  return [subheading(words.depth.heading), ...blocks];
}

function depthOf(page: PageContext, { electrodes, of }: Alike<StudyDepthCurve>, mark: string): readonly Block[] {
  const svg = depthChart(page.study, electrodes.join(', '), of);
  const list = partNames(page, electrodes);
  const caption = of.some((c) => c.lengthM !== null) ? words.depth.figure : words.depth.figureOnly;
  return [
    paragraph(depthSentence(page, list, of[0]!)),
    { is: 'figure', id: `soil-depth-figure-${mark}`, svg, caption: sayIn(page, caption, { list }) },
    ...tableIfAny({
      id: `soil-depth-${mark}`,
      caption: sayIn(page, words.depth.caption, { list }),
      head: [words.depth.length, ...of.map((c) => conditionName(c.condition))],
      rows: lengthsOf(of[0]!).map((lengthM) =>
        row(cell(figure(page, lengthM, 'length')), ...of.map((c) => cell(ohmAt(c, lengthM)))),
      ),
    }),
  ];
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
  const found = points.find((p) => p.lengthM === lengthM);
  return found === undefined ? '–' : ohmRange(found.ohm);
}

/** What a second one brings: a sentence for each that differs, and one chart. */
export function spacingBlocks(page: PageContext): readonly Block[] {
  const gains = page.study.earth.spacingGains.filter((g) => g.points.length > 1);
  if (gains.length === 0) return [];
  const kinds = alike(gains);
  const drawn = kinds.map((k) => ({ electrode: k.electrodes.join(', '), points: k.of[0]!.points }));
  const svg = spacingChart(page.study, drawn);
  return [
    subheading(words.spacing.heading),
    ...kinds.map((k) => paragraph(spacingSentence(page, k))),
    { is: 'figure', id: 'soil-spacing-figure', svg, caption: words.spacing.figure },
  ];
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
