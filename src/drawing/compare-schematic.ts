import type { Comparison } from '../compare/comparison.ts';
import type { Study, StudyPart } from '../study/study.ts';
import { compareDrawingWords as words } from '../words/compare-drawing-words.ts';
import { drawingWords } from '../words/drawing-words.ts';
import { type Speech, say } from '../words/say.ts';
import type { Box, BoxRow, BoxTie } from './box-columns.ts';
import { type Fate, fateSign, fates } from './compare-fate.ts';
import { fateLists, type Union, unionOf } from './compare-union.ts';
import { symbolEntries } from './diagram-legend.ts';
import { drawBoxes } from './draw-boxes.ts';
import { itemNumbers, partOfPoint } from './item-numbers.ts';
import { drawLegend, type LegendEntry } from './legend.ts';
import { speechOf } from './speech.ts';
import { drawing, group, line, text } from './svg.ts';
import { ink, type SymbolName, symbolOf } from './symbols.ts';
import { strokeOf, type TieStyle } from './tie-style.ts';

const widthMm = 180;
const noteMm = 6;
const longThings = ['lines', 'conductors'];
/** Strokes of the diagram that stand for what became of a conductor or line here. */
const styles: Readonly<Record<Fate, TieStyle>> = { added: 'bond', removed: 'other', changed: 'cord', same: 'shield' };

/**
 * For sites without positions: what was and is there in boxes by where it stands, each with the sign of what became of it,
 * conductors and lines between them. It says that it is no plan. No distance on it means anything.
 */
export function compareSchematic(before: Study, after: Study, comparison: Comparison): string {
  const union = unionOf(before, after, comparison.parts);
  const speech = speechOf(after);
  const numbers = itemNumbers(union.study);
  const boxes = boxesByPlace(union, numbers, speech);
  const ties = tiesOf(union, numbers);
  const body = drawBoxes(boxes, ties, widthMm);
  const shown = new Set(ties.map((t) => t.style));
  const symbols = new Set(boxes.flatMap((b) => b.rows.map((r) => r.symbol)));
  const legend = schematicLegend(shown, symbols, speech, noteMm + body.heightMm + 4);
  const sheet = {
    widthMm,
    heightMm: noteMm + body.heightMm + 4 + legend.heightMm,
    title: say(words.schematicTitle, { site: after.site.name ?? after.site.file }, speech),
    description: say(words.schematicDescription, fateLists(union, words.nothing), speech),
  };
  const note = text(words.schematicNote, { x: 0.4, y: 3.6, 'font-size': 2.8, 'font-weight': 'bold', fill: ink });
  return drawing(sheet, [
    note,
    group({ transform: `translate(0 ${noteMm})` }, body.children),
    group({}, legend.children),
  ]);
}

type BoxPart = Pick<StudyPart, 'id' | 'where' | 'on' | 'count'> & { readonly symbol: SymbolName };

function boxesByPlace(union: Union, numbers: ReadonlyMap<string, string>, speech: Speech): readonly Box[] {
  const { parts, guys } = union.study;
  const order = new Map([...numbers.keys()].map((id, place) => [id, place]));
  const shown: readonly BoxPart[] = [
    ...parts.filter((p) => !longThings.includes(p.section)).map((p) => ({ ...p, symbol: symbolOf(p) })),
    ...guys.map((g) => ({ id: g.id, where: 'outside', on: g.support, count: 1, symbol: 'guyAnchor' as const })),
  ].sort((a, b) => (order.get(a.id) ?? 0) - (order.get(b.id) ?? 0));
  const buildings = [...new Set(shown.map((p) => p.where))].filter((w) => w !== null && w !== 'outside').sort();
  const box = (title: string, where: string | null, column: Box['column']): Box => ({
    title,
    column,
    rows: shown.filter((p) => p.where === where).map((p) => boxRow(p, union, numbers)),
  });
  const says = drawingWords.schematic;
  const inside = buildings.map((b) => box(say(says.inside, { building: b }, speech), b, 'right'));
  return [box(says.outside, 'outside', 'left'), ...inside, box(says.unknown, null, null)].filter(
    (b) => b.rows.length > 0,
  );
}

function boxRow(part: BoxPart, { fates: all }: Union, numbers: ReadonlyMap<string, string>): BoxRow {
  const fate = all.get(part.id) ?? 'same';
  const on = part.on === null ? '' : (numbers.get(partOfPoint(part.on)) ?? part.on);
  return {
    id: part.id,
    symbol: part.symbol,
    number: `${fateSign[fate]}${numbers.get(part.id) ?? ''}`,
    name: part.count > 1 ? `${part.id} ×${part.count}` : part.id,
    note: part.on === null ? '' : drawingWords.schematic.on.replace('{on}', () => on),
    mark: '',
    indent: 0,
    parent: null,
    parentStyle: 'bond',
  };
}

/** Conductors from end to end, and pieces of lines between stops that are parts. */
function tiesOf({ study, fates: all }: Union, numbers: ReadonlyMap<string, string>): readonly BoxTie[] {
  const ids = new Set(study.parts.map((p) => p.id));
  const tie = (id: string, a: string, b: string): BoxTie => {
    const fate = all.get(id) ?? 'same';
    return { a, b, style: styles[fate], label: `${fateSign[fate]}${numbers.get(id) ?? ''}` };
  };
  const conductors = study.conductors.map((c) => tie(c.id, partOfPoint(c.from), partOfPoint(c.to)));
  const lines = study.lines.flatMap((l) => {
    const stops = l.stops.map((s) => partOfPoint(s.replace(/^(?:bond|bend|plug) /, ''))).filter((s) => ids.has(s));
    return stops.slice(1).map((b, i) => tie(l.id, stops[i]!, b));
  });
  return [...conductors, ...lines];
}

function schematicLegend(
  shown: ReadonlySet<TieStyle>,
  symbols: ReadonlySet<SymbolName>,
  speech: Speech,
  topMm: number,
) {
  const entries: readonly LegendEntry[] = fates
    .filter((fate) => shown.has(styles[fate]))
    .map((fate) => ({
      sample: (x, y) => [line([x - 4.5, y], [x + 4.5, y], strokeOf(styles[fate]))],
      says: words.schematicFates[fate],
    }));
  const all = [...entries, ...symbolEntries(speech, (s) => symbols.has(s))];
  return drawLegend(drawingWords.legend.heading, all, widthMm, topMm);
}
