import type { Study, StudyElectrode } from '../study/study.ts';
import { pageWords } from '../words/page.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { type Block, cell, paragraph, type Row, row, type Section, tableIfAny } from './block.ts';
import {
  boundedFigure,
  clauseName,
  figure,
  numberOf,
  type PageContext,
  partName,
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
  return value === null ? words.notWorkedOut : boundedFigure(page, value, 'resistance');
}

function electrodeTable(page: PageContext): readonly Block[] {
  return tableIfAny({
    id: 'resistance-electrodes',
    caption: sayIn(page, words.caption),
    head: [pageWords.page.number, pageWords.page.name, words.alone, words.share, words.how, words.formula],
    rows: page.study.earth.electrodes.map((e) => electrodeRow(page, e)),
  });
}

function electrodeRow(page: PageContext, e: StudyElectrode): Row {
  const share = e.currentShare === null ? '–' : `${Math.round(e.currentShare * 100)} %`;
  const source = e.source === null ? null : `${clauseName(page, e.source)}; ${provenanceName(e.source)}`;
  return row(
    cell(numberOf(page, e.id)),
    cell(e.id),
    cell(boundedFigure(page, e.aloneOhm, 'resistance')),
    cell(share),
    cell(words.hows[e.how]),
    cell(e.formula ?? '–', source),
  );
}

function groupTable(page: PageContext): readonly Block[] {
  return tableIfAny({
    id: 'resistance-groups',
    caption: sayIn(page, words.groupsCaption),
    head: [pageWords.page.group, scheduleWords.schedules.resistance],
    rows: page.study.earth.groups.map((g) =>
      row(cell(partName(page, g.id)), cell(boundedFigure(page, g.resistanceOhm, 'resistance'))),
    ),
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
  return [paragraph(sayIn(page, words.coupling, { pairs }))];
}
