import type { Study } from '../study/study.ts';
import type { Bounded } from '../study/study-earth.ts';
import { earthOhmText, isMetalBelow } from '../words/earth-ohm.ts';
import { type Speech, say } from '../words/say.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';
import { drawAxes, fittingScale, type Scale } from './chart-axes.ts';
import { conditionName } from './chart-names.ts';
import { drawLegend } from './legend.ts';
import { seasonBar, seasonLegend } from './season-bar.ts';
import { type SeasonSubject, seasonSubjects } from './season-subjects.ts';
import { speechOf } from './speech.ts';
import { drawing, type Svg, text } from './svg.ts';
import { ink } from './symbols.ts';
import { fitText } from './text-width.ts';

const words = soilDrawingWords.season;
const widthMm = 180;
const namesMm = 44;
const figuresMm = 32;
const rowMm = 4.3;
const topMm = 3;
const size = 2.7;
/** Rows that one sheet of paper holds. */
const mostRows = 36;

/**
 * Resistance of the whole and of each group in each condition of the ground, as bars from low to high with a mark at the
 * likely figure: SVG texts, one for each sheet that the rows need; [] where nothing is known.
 */
export function seasonCharts(study: Study): readonly string[] {
  const subjects = seasonSubjects(study);
  const figures = subjects.flatMap((s) => s.conditions).flatMap(({ ohm }) => (ohm === null ? [] : figuresOf(ohm)));
  if (figures.length === 0) return [];
  const scale = fittingScale(figures, [namesMm, widthMm - figuresMm]);
  return sheets(subjects).map((part) => seasonSheet(study, part, scale));
}

/** A bound that is only that of the metal would stretch the axis over decades of which nobody knows anything. */
function figuresOf(ohm: Bounded): readonly number[] {
  const { value, low, high } = ohm;
  return [isMetalBelow(ohm) ? null : low, value, high].filter((f): f is number => f !== null);
}

/** Subjects whole, as many as a sheet holds, at least one. */
function sheets(subjects: readonly SeasonSubject[]): readonly (readonly SeasonSubject[])[] {
  const all: SeasonSubject[][] = [];
  for (const s of subjects) {
    const last = all.at(-1);
    const rows = [...(last ?? []), s].reduce((sum, one) => sum + rowsOf(one), 0);
    if (last === undefined || rows > mostRows) all.push([s]);
    else last.push(s);
  }
  return all;
}

/** One for its name, one for each condition. */
function rowsOf(subject: SeasonSubject): number {
  return subject.conditions.length + 1;
}

function seasonSheet(study: Study, subjects: readonly SeasonSubject[], x: Scale): string {
  const speech = speechOf(study);
  const height = subjects.reduce((sum, s) => sum + rowsOf(s), 0) * rowMm + 2;
  const plot = { x: namesMm, y: topMm, width: widthMm - figuresMm - namesMm, height };
  const all = subjects.flatMap((s) => s.conditions).map((c) => c.ohm);
  const legend = drawLegend(soilDrawingWords.legend, seasonLegend(all), widthMm, topMm + height + 11);
  const noScale: Scale = { low: 0, high: 1, ticks: [], at: () => 0 };
  const sheet = {
    widthMm,
    heightMm: topMm + height + 11 + legend.heightMm,
    title: words.title,
    description: say(words.description, { list: entries(subjects, speech) }, speech),
  };
  return drawing(sheet, [
    ...drawAxes(plot, x, noScale, { x: say(words.resistance, {}, speech), y: '' }),
    ...rows(subjects, x, speech),
    ...legend.children,
  ]);
}

function rows(subjects: readonly SeasonSubject[], x: Scale, speech: Speech): readonly Svg[] {
  let y = topMm + 1;
  return subjects.flatMap((s): readonly Svg[] => {
    const name = fitText(subjectName(s, speech), size, namesMm - 2);
    const head = text(name, { x: 0, y: y + 3.4, 'font-size': size, 'font-weight': 'bold', fill: ink });
    const bars = s.conditions.flatMap(({ id, ohm }, i) => row(id, ohm, x, y + (i + 1.5) * rowMm));
    y += rowsOf(s) * rowMm;
    return [head, ...bars];
  });
}

function row(id: string, ohm: Bounded | null, x: Scale, middle: number): readonly Svg[] {
  const label = { 'font-size': size, fill: ink };
  const says = earthOhmText(ohm) ?? soilDrawingWords.unknown;
  return [
    text(fitText(conditionName(id), size, namesMm - 6), { x: 3, y: middle + 0.95, ...label }),
    ...(ohm === null ? [] : seasonBar(ohm, x, middle, [namesMm, widthMm - figuresMm])),
    text(says, { x: widthMm - figuresMm + 2.5, y: middle + 0.95, ...label }),
  ];
}

function subjectName({ group }: SeasonSubject, speech: Speech): string {
  return group === null ? say(words.whole, {}, speech) : say(words.group, { group }, speech);
}

function entries(subjects: readonly SeasonSubject[], speech: Speech): readonly string[] {
  return subjects.flatMap((s) =>
    s.conditions.map(({ id, ohm }) => {
      const figure = earthOhmText(ohm) ?? soilDrawingWords.unknown;
      return say(words.entry, { of: subjectName(s, speech), condition: conditionName(id), ohm: figure }, speech);
    }),
  );
}
