import type { Study, StudyPart } from '../study/study.ts';
import { drawingWords } from '../words/drawing-words.ts';
import { type Speech, say } from '../words/say.ts';
import { bondTree, type TreeRow } from './bond-tree.ts';
import type { Box, BoxRow, BoxTie } from './box-columns.ts';
import { diagramLegend } from './diagram-legend.ts';
import { drawBoxes } from './draw-boxes.ts';
import { itemNumbers, partOfPoint } from './item-numbers.ts';
import { speechOf } from './speech.ts';
import { splitBox } from './split-box.ts';
import { drawing, group } from './svg.ts';
import { symbolOf } from './symbols.ts';
import { type TieStyle, tieStyleOf } from './tie-style.ts';
import { weakMarks } from './weak-marks.ts';
import { weakRows } from './weak-rows.ts';

const words = drawingWords.diagram;
const widthMm = 180;

interface Maker {
  readonly study: Study;
  readonly speech: Speech;
  readonly numbers: ReadonlyMap<string, string>;
  readonly parts: ReadonlyMap<string, StudyPart>;
  readonly marks: ReadonlyMap<string, string>;
  /** Place of each part in the order of the numbers. */
  readonly places: ReadonlyMap<string, number>;
  readonly bonds: readonly Study['bonding']['ties'][number][];
}

/**
 * Who is bonded to whom, as SVG text: each group a box with its parts as a tree of bonds; between boxes the ties that are
 * no bond or that nobody is sure of. Conductors and lines are not boxes but the numbers beside what they tie.
 */
export function bondingDiagram(study: Study): string {
  const speech = speechOf(study);
  const parts = new Map(study.parts.map((p) => [p.id, p]));
  const numbers = itemNumbers(study);
  const places = new Map([...numbers.keys()].map((id, place) => [id, place]));
  const bonds = study.bonding.ties.filter((t) => isBond(t) && t.a !== t.b);
  const make = { study, speech, numbers, parts, marks: weakMarks(study), places, bonds };
  const trees = study.bonding.groups.map((g) => groupTree(make, g));
  const boxes = trees.filter((t) => t.rows.length > 0).flatMap((t) => boxesOf(make, t));
  const body = drawBoxes(boxes, freeTies(make, trees), widthMm);
  const legend = diagramLegend(speech, widthMm, body.heightMm + 4);
  const values = { groups: String(study.bonding.groups.length), weak: String(weakRows(study).length) };
  const title = say(words.title, { site: study.site.name ?? study.site.file }, speech);
  const sheet = {
    widthMm,
    heightMm: body.heightMm + 4 + legend.heightMm,
    title,
    description: say(words.description, values, speech),
  };
  return drawing(sheet, [group({}, body.children), group({}, legend.children)]);
}

type Group = Study['bonding']['groups'][number];
interface GroupTree {
  readonly group: Group;
  readonly rows: readonly TreeRow[];
}

function groupTree({ study, parts, places, bonds }: Maker, g: Group): GroupTree {
  const ids = g.parts
    .filter((id) => parts.has(id) && !['conductors', 'lines'].includes(parts.get(id)!.section))
    .toSorted((a, b) => places.get(a)! - places.get(b)!);
  const service = ids.find((id) => id === study.site.service);
  const root = service ?? ids.find((id) => g.electrodes.includes(id)) ?? ids[0];
  const own = ids.length === 1 ? [] : bonds;
  return { group: g, rows: root === undefined ? [] : bondTree(ids, root, own) };
}

function isBond(t: Study['bonding']['ties'][number]): boolean {
  const style = tieStyleOf(t);
  return style === 'bond' || style === 'feeder';
}

function boxesOf(make: Maker, tree: GroupTree): readonly Box[] {
  const whole = box(make, tree);
  const continued = say(words.continued, { group: whole.title }, make.speech);
  const on = (row: BoxRow) => make.numbers.get(row.parent ?? '') ?? '';
  const apart = (row: BoxRow) => ({
    ...row,
    note: say(words.hangsOn, { by: row.note, on: on(row) }, make.speech).trim(),
  });
  return splitBox(whole, continued, apart);
}

function box(make: Maker, { group: g, rows }: GroupTree): Box {
  const service = g.hasService === true;
  const title = rows.length === 1 && !service ? '' : groupTitle(make, g);
  return { title, column: service ? 'left' : null, rows: rows.map((r) => boxRow(make, r)) };
}

function groupTitle({ speech, numbers }: Maker, g: Group): string {
  const name = `${numbers.get(g.id) ?? ''} ${g.id}`.trim();
  return g.hasService === true ? `${name}: ${say(words.service, {}, speech)}` : name;
}

function boxRow(make: Maker, row: TreeRow): BoxRow {
  const part = make.parts.get(row.id)!;
  const by = row.tie === null || row.tie.part === row.id || row.tie.part === row.parent ? null : row.tie.part;
  const marks = [by === null ? undefined : make.marks.get(by), make.marks.get(row.id)];
  return {
    id: row.id,
    symbol: symbolOf(part),
    number: make.numbers.get(row.id) ?? '',
    name: part.count > 1 ? `${row.id} ×${part.count}` : row.id,
    note: by === null ? '' : say(words.byConductor, { list: make.numbers.get(by) ?? by }, make.speech),
    mark: marks.filter((m) => m !== undefined).join(' '),
    indent: row.depth,
    parent: row.parent,
    parentStyle: row.tie === null ? 'bond' : tieStyleOf(row.tie),
  };
}

/** Strongest first: where several ties join the same two parts, they are one stroke in the look of the strongest. */
const strength: readonly TieStyle[] = ['bond', 'feeder', 'shield', 'cord', 'unknown', 'other'];

/** Ties that the trees do not hold: bonds that close a loop, and all that is no bond between different groups. */
function freeTies({ study, numbers }: Maker, trees: readonly GroupTree[]): readonly BoxTie[] {
  const groupOf = new Map(trees.flatMap((t) => t.rows.map((r) => [r.id, t.group.id] as const)));
  const inTrees = new Set(trees.flatMap((t) => t.rows.map((r) => r.tie)));
  const wanted = study.bonding.ties
    .map((t) => ({ ...t, tie: t, a: partOfPoint(t.a), b: partOfPoint(t.b) }))
    .filter((t) => t.a !== t.b && groupOf.has(t.a) && groupOf.has(t.b) && !inTrees.has(t.tie))
    .filter((t) => isBond(t) || groupOf.get(t.a) !== groupOf.get(t.b));
  const pairs = new Map<string, (typeof wanted)[number][]>();
  for (const t of wanted) {
    const key = t.a < t.b ? `${t.a} ${t.b}` : `${t.b} ${t.a}`;
    pairs.set(key, [...(pairs.get(key) ?? []), t]);
  }
  return [...pairs.values()].map((same) => {
    const styles = same.map(tieStyleOf);
    const style = strength.find((s) => styles.includes(s))!;
    const label = [...new Set(same.map((t) => numbers.get(t.part) ?? t.part))].join(', ');
    return { a: same[0]!.a, b: same[0]!.b, style, label };
  });
}
