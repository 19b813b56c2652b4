import type { Study, StudyPart } from '../study/study.ts';
import { drawingWords } from '../words/drawing-words.ts';
import { type Speech, say } from '../words/say.ts';
import type { Box, BoxTie } from './box-columns.ts';
import { symbolEntries } from './diagram-legend.ts';
import { drawBoxes } from './draw-boxes.ts';
import { itemNumbers, partOfPoint } from './item-numbers.ts';
import { drawLegend } from './legend.ts';
import { speechOf } from './speech.ts';
import { drawing, group, line, text } from './svg.ts';
import { ink, type SymbolName, symbolOf } from './symbols.ts';
import { strokeOf, type TieStyle } from './tie-style.ts';

const words = drawingWords.schematic;
const widthMm = 180;
const noteMm = 6;

/**
 * For a site without positions: parts in boxes by where they stand, outside at the left, buildings at the right, with
 * conductors and lines between them. It says that it is no plan. No distance on it means anything.
 */
export function schematic(study: Study): string {
  const speech = speechOf(study);
  const numbers = itemNumbers(study);
  const boxes = boxesByPlace(study, numbers, speech);
  const body = drawBoxes(boxes, [...conductorTies(study, numbers), ...lineTies(study, numbers)], widthMm);
  const legend = schematicLegend(study, speech, noteMm + body.heightMm + 4);
  const values = { parts: String(boxes.reduce((sum, b) => sum + b.rows.length, 0)) };
  const sheet = {
    widthMm,
    heightMm: noteMm + body.heightMm + 4 + legend.heightMm,
    title: say(words.title, { site: study.site.name ?? study.site.file }, speech),
    description: say(words.description, values, speech),
  };
  const note = text(words.note, { x: 0.4, y: 3.6, 'font-size': 2.8, 'font-weight': 'bold', fill: ink });
  return drawing(sheet, [
    note,
    group({ transform: `translate(0 ${noteMm})` }, body.children),
    group({}, legend.children),
  ]);
}

const longThings = ['lines', 'conductors'];

function boxesByPlace(study: Study, numbers: ReadonlyMap<string, string>, speech: Speech): readonly Box[] {
  const order = [...numbers.keys()];
  const shown = [
    ...study.parts.filter((p) => !longThings.includes(p.section)).map(boxPart),
    ...guyParts(study),
  ].toSorted((a, b) => order.indexOf(a.id) - order.indexOf(b.id));
  const buildings = [...new Set(shown.map((p) => p.where))].filter((w) => w !== null && w !== 'outside').sort();
  const box = (title: string, where: string | null, column: Box['column']): Box => ({
    title,
    column,
    rows: shown.filter((p) => p.where === where).map((p) => boxRow(p, numbers)),
  });
  const inside = buildings.map((b) => box(say(words.inside, { building: b }, speech), b, 'right'));
  return [box(words.outside, 'outside', 'left'), ...inside, box(words.unknown, null, null)].filter(
    (b) => b.rows.length > 0,
  );
}

type BoxPart = Pick<StudyPart, 'id' | 'where' | 'on' | 'count'> & { readonly symbol: SymbolName };

function boxPart(part: StudyPart): BoxPart {
  return { ...part, symbol: symbolOf(part) };
}

function guyParts(study: Study): readonly BoxPart[] {
  return study.guys.map((g) => ({ id: g.id, where: 'outside', on: g.support, count: 1, symbol: 'guyAnchor' }));
}

function boxRow(part: BoxPart, numbers: ReadonlyMap<string, string>): Box['rows'][number] {
  return {
    id: part.id,
    symbol: part.symbol,
    number: numbers.get(part.id) ?? '',
    name: part.count > 1 ? `${part.id} ×${part.count}` : part.id,
    note: part.on === null ? '' : say(words.on, { on: numbers.get(partOfPoint(part.on)) ?? part.on }, plain),
    mark: '',
    indent: 0,
    parent: null,
    parentStyle: 'bond',
  };
}

/** Where a sentence has no term and no figure. */
const plain: Speech = { terms: 'us', unitsFirst: 'si' };

function conductorTies(study: Study, numbers: ReadonlyMap<string, string>): readonly BoxTie[] {
  return study.conductors.map((c) => ({
    a: partOfPoint(c.from),
    b: partOfPoint(c.to),
    style: c.buried === 'yes' ? 'feeder' : 'bond',
    label: numbers.get(c.id) ?? '',
  }));
}

/** Pieces of a line between stops that are parts; the street, plugs and bends are no parts. */
function lineTies(study: Study, numbers: ReadonlyMap<string, string>): readonly BoxTie[] {
  const ids = new Set(study.parts.map((p) => p.id));
  return study.lines.flatMap((l) => {
    const stops = l.stops.map((s) => partOfPoint(s.replace(/^(?:bond|bend|plug) /, ''))).filter((s) => ids.has(s));
    return stops
      .slice(1)
      .map((b, i) => ({ a: stops[i]!, b, style: 'shield' as const, label: numbers.get(l.id) ?? '' }));
  });
}

function schematicLegend(study: Study, speech: Speech, topMm: number) {
  const parts = study.parts.filter((p) => !longThings.includes(p.section)).map(boxPart);
  const symbols = new Set([...parts, ...guyParts(study)].map((p) => p.symbol));
  const sample = (style: TieStyle) => (x: number, y: number) => [line([x - 4.5, y], [x + 4.5, y], strokeOf(style))];
  const strokes = [
    { sample: sample('bond'), says: words.conductor },
    { sample: sample('feeder'), says: words.buried },
    { sample: sample('shield'), says: words.line },
  ];
  return drawLegend(
    drawingWords.legend.heading,
    [...strokes, ...symbolEntries(speech, (s) => symbols.has(s))],
    widthMm,
    topMm,
  );
}
