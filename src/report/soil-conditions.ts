import { conditionName, percent } from '../drawing/chart-names.ts';
import { seasonCharts } from '../drawing/season-chart.ts';
import { type SeasonSubject, seasonSubjects } from '../drawing/season-subjects.ts';
import type { StudyEarthCondition, StudyLayer } from '../study/study-earth.ts';
import { formatQuantity } from '../units/format.ts';
import { earthOhmText } from '../words/earth-ohm.ts';
import { pageWords } from '../words/page.ts';
import { soilWords } from '../words/soil-words.ts';
import { type Block, type Cell, cell, listCell, paragraph, row, subheading, tableIfAny } from './block.ts';
import { boundedFigure, type PageContext, partName, sayIn } from './page-context.ts';

const words = soilWords.conditions;
/** Columns of figures that a sheet of paper has room for. */
const mostColumns = 5;
/** So many resistances have room beside the layers. */
const mostBeside = 1;

/** Soil and resistances in each condition; [] where there is only the soil as typed, which the table of resistances has. */
export function conditionBlocks(page: PageContext): readonly Block[] {
  const { conditions } = page.study.earth;
  if (conditions.length < 2) return [];
  const figures = seasonCharts(page.study).map((svg, i) => {
    const caption = i === 0 ? words.figure : sayIn(page, words.part, { caption: words.figure, part: String(i + 1) });
    return { is: 'figure', id: `soil-season-${i + 1}`, svg, caption } as const;
  });
  const subjects = seasonSubjects(page.study);
  const inOne = subjects.length <= mostBeside;
  return [
    subheading(words.heading),
    paragraph(sayIn(page, words.intro)),
    ...soilTable(page, inOne ? subjects : []),
    ...(inOne ? [] : ohmTables(page, subjects)),
    ...figures,
  ];
}

/** What each condition means, and the resistances of some beside it. */
function soilTable(page: PageContext, beside: readonly SeasonSubject[]): readonly Block[] {
  return tableIfAny({
    id: 'soil-conditions',
    caption: sayIn(page, beside.length === 0 ? words.soilCaption : words.soilOhmCaption),
    head: [words.condition, words.means, words.layers, ...beside.map((s) => subjectName(page, s))],
    rows: page.study.earth.conditions.map((c, place) =>
      row(
        cell(conditionName(c.id)),
        cell(c.says),
        listCell(layersText(page, c.layers)),
        ...beside.map((s) => ohmCell(s, place)),
      ),
    ),
  });
}

function ohmCell({ conditions }: SeasonSubject, place: number): Cell {
  return cell(earthOhmText(conditions[place]?.ohm ?? null) ?? pageWords.page.unknown);
}

function layersText(page: PageContext, layers: readonly StudyLayer[]): readonly string[] {
  if (layers.length === 0) return [pageWords.page.unknown];
  return layers.map((l, i) => {
    const resistivity = boundedFigure(page, l.resistivityOhmM, 'resistivity');
    const thickness = boundedFigure(page, l.thicknessM, 'length');
    const isLast = i === layers.length - 1;
    const last = layers.length === 1 ? words.layerOnly : words.layerBelow;
    const open = isLast ? last : words.layerOpen;
    return sayIn(page, l.thicknessM === null ? open : words.layer, { resistivity, thickness });
  });
}

/** A row for each condition; the whole and the groups beside each other, as many as fit, the rest in a table below. */
function ohmTables(page: PageContext, all: readonly SeasonSubject[]): readonly Block[] {
  const { conditions } = page.study.earth;
  return inPieces(all).flatMap((subjects, i) =>
    tableIfAny({
      id: `soil-ohm-${i + 1}`,
      caption: captionOf(page, words.ohmCaption, i),
      head: [words.condition, ...subjects.map((s) => subjectName(page, s))],
      rows: conditions.map((c, place) => row(cell(conditionName(c.id)), ...subjects.map((s) => ohmCell(s, place)))),
    }),
  );
}

function subjectName(page: PageContext, { group }: SeasonSubject): string {
  return group === null ? sayIn(page, words.whole) : sayIn(page, words.group, { group: partName(page, group) });
}

/** Each electrode alone and among the others, in each condition; [] where the conditions say nothing of any. */
export function electrodeBlocks(page: PageContext): readonly Block[] {
  const { conditions } = page.study.earth;
  const all = conditions.flatMap((c) => c.electrodes);
  const ids = [...new Set(all.filter((e) => e.aloneOhm !== null || e.currentShare !== null).map((e) => e.id))];
  if (ids.length === 0 || conditions.length < 2) return [];
  const { caption, electrode, intro, within } = soilWords.electrodes;
  const [now] = conditions;
  const tables = inPieces(conditions).flatMap((some, i) => {
    const hasNow = some[0] === now;
    const head = some.map((c) => conditionName(c.id));
    return tableIfAny({
      id: `soil-electrodes-${i + 1}`,
      look: 'wide',
      caption: captionOf(page, caption, i),
      head: [sayIn(page, electrode), ...(hasNow ? [within] : []), ...head],
      rows: ids.map((id) =>
        row(
          cell(partName(page, id)),
          ...(hasNow ? [cell(withinOthers(now!, id))] : []),
          ...some.map((c) => electrodeCell(page, c, id)),
        ),
      ),
    });
  });
  return [paragraph(sayIn(page, intro)), ...tables];
}

/** `24 to 95 (36 %)`: alone, to two digits, and the share of the current. */
function electrodeCell(page: PageContext, condition: StudyEarthCondition, id: string): Cell {
  const e = condition.electrodes.find((one) => one.id === id);
  if (e === undefined) return cell('–');
  const alone = withoutUnit(earthOhmText(e.aloneOhm, 2) ?? pageWords.page.unknown);
  if (e.currentShare === null) return cell(alone);
  return cell(sayIn(page, soilWords.electrodes.aloneAndShare, { alone, share: percent(e.currentShare) }));
}

/** Voltage of the service's bar over the current of this one. */
function withinOthers({ resistanceOhm, electrodes }: StudyEarthCondition, id: string): string {
  const whole = resistanceOhm?.value ?? null;
  const share = electrodes.find((e) => e.id === id)?.currentShare ?? null;
  if (whole === null || share === null || share <= 0) return '–';
  return withoutUnit(formatQuantity(whole / share, 'resistance', 'si', { digits: 2 }) ?? '–');
}

/** Where the caption has the unit. */
function withoutUnit(figure: string): string {
  return figure.replace(/[ \u00a0]ohm$/, '');
}

/** The first of several tables has the plain caption; the others say which part they are. */
function captionOf(page: PageContext, template: string, place: number): string {
  const caption = sayIn(page, template);
  return place === 0 ? caption : sayIn(page, words.tablePart, { caption, part: String(place + 1) });
}

/** Pieces of about the same length, none longer than a sheet is wide. */
function inPieces<T>(all: readonly T[]): readonly (readonly T[])[] {
  const each = Math.ceil(all.length / Math.ceil(all.length / mostColumns));
  const pieces: (readonly T[])[] = [];
  for (let i = 0; i < all.length; i += each) pieces.push(all.slice(i, i + each));
  return pieces;
}
