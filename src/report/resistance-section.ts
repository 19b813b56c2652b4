import type { Bounded, Study, StudyElectrode } from '../study/study.ts';
import { earthOhmText, isMetalBelow } from '../words/earth-ohm.ts';
import { pageWords } from '../words/page.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { type Block, cell, paragraph, type Row, row, type Section, tableIfAny } from './block.ts';
import {
  clauseName,
  figure,
  numberOf,
  type PageContext,
  partName,
  partNames,
  provenanceName,
  sayIn,
} from './page-context.ts';

const words = scheduleWords.resistances;

/** Resistance to remote ground: the whole, each electrode with its formula, each group, and the soil behind it. */
export function resistanceSection(page: PageContext): Section {
  const { earth } = page.study;
  const blocks = [
    paragraph(sayIn(page, words.intro)),
    paragraph(sayIn(page, words.whole, { range: whole(page, earth.resistanceOhm) })),
    ...(earth.withServicesOhm === null
      ? []
      : [paragraph(sayIn(page, words.withServices, { range: whole(page, earth.withServicesOhm) }))]),
    ...electrodeTable(page),
    ...groupTable(page),
    ...soil(page),
    ...couplingLeftOut(page),
  ];
  return { id: 'resistances', heading: sayIn(page, words.heading), blocks };
}

function whole(page: PageContext, value: Study['earth']['resistanceOhm']): string {
  if (value === null) return words.notWorkedOut;
  const text = earthOhmText(value) ?? words.notKnown;
  return isMetalBelow(value) && text !== words.notKnown ? sayIn(page, words.lowNotKnown, { range: text }) : text;
}

/** Of one or several electrodes; unknown where only the metal bounds it. */
function ohmCell(value: Bounded | null) {
  return cell(earthOhmText(value) ?? pageWords.page.unknown);
}

function electrodeTable(page: PageContext): readonly Block[] {
  const formulas = formulasOf(page);
  const electrodes = tableIfAny({
    id: 'resistance-electrodes',
    caption: sayIn(page, words.caption),
    head: [pageWords.page.number, pageWords.page.name, words.alone, words.share, words.how],
    rows: page.study.earth.electrodes.map((e) => electrodeRow(page, e, formulas)),
  });
  const sources = tableIfAny({
    id: 'resistance-formulas',
    caption: words.formulasCaption,
    head: [words.mark, words.formula, words.source],
    rows: [...formulas].map(([key, mark]) => {
      const [formula, source] = JSON.parse(key) as readonly [string, string];
      return row(cell(mark), cell(formula), cell(source));
    }),
  });
  return [...electrodes, ...sources];
}

/** A letter for each formula with its source. */
function formulasOf(page: PageContext): ReadonlyMap<string, string> {
  const keys = [...new Set(page.study.earth.electrodes.flatMap((e) => formulaKey(page, e) ?? []))];
  return new Map(keys.map((key, i) => [key, String.fromCharCode(65 + i)]));
}

function formulaKey(page: PageContext, { formula, source }: StudyElectrode): string | null {
  if (formula === null) return null;
  const text = source === null ? '–' : `${clauseName(page, source)}; ${provenanceName(source)}`;
  return JSON.stringify([formula, text]);
}

function electrodeRow(page: PageContext, e: StudyElectrode, formulas: ReadonlyMap<string, string>): Row {
  const share = e.currentShare === null ? '–' : `${Math.round(e.currentShare * 100)} %`;
  const mark = formulas.get(formulaKey(page, e) ?? '');
  const how = mark === undefined ? null : sayIn(page, words.byFormula, { mark });
  return row(
    cell(numberOf(page, e.id)),
    cell(e.id),
    ohmCell(e.aloneOhm),
    cell(share),
    cell([words.hows[e.how], how].filter((t) => t !== null).join(', ')),
  );
}

function groupTable(page: PageContext): readonly Block[] {
  return tableIfAny({
    id: 'resistance-groups',
    caption: sayIn(page, words.groupsCaption),
    head: [pageWords.page.group, scheduleWords.schedules.resistance],
    rows: page.study.earth.groups.map((g) => row(cell(partName(page, g.id)), ohmCell(g.resistanceOhm))),
  });
}

function soil(page: PageContext): readonly Block[] {
  const { soil: ground } = page.study.earth;
  if (ground === null) return [paragraph(words.noSoil)];
  const rows = ground.layers.map((l, i) =>
    row(
      cell(String(i + 1)),
      cell(figure(page, l.resistivityOhmM, 'resistivity')),
      cell(
        l.thicknessM === null && i === ground.layers.length - 1 ? words.below : figure(page, l.thicknessM, 'length'),
      ),
    ),
  );
  const head = [words.layer, words.resistivity, words.thickness];
  return [
    paragraph(sayIn(page, words.soilType, { type: ground.type ?? words.noType, known: ground.known })),
    ...tableIfAny({ id: 'soil-table', caption: words.soilCaption, head, rows }),
  ];
}

function couplingLeftOut(page: PageContext): readonly Block[] {
  const all = page.study.earth.couplingLeftOut;
  if (all.length === 0) return [];
  const pairs = all.map(([a, b]) => sayIn(page, words.pair, { a: partName(page, a), b: partName(page, b) }));
  if (all.length <= mostPairs) return [paragraph(sayIn(page, words.coupling, { pairs }))];
  const list = partNames(page, [...new Set(all.flat())]);
  return [paragraph(sayIn(page, words.manyCouplings, { count: String(all.length), list }))];
}

/** More pairs than this are a wall of text. */
const mostPairs = 6;
