import type { Study } from '../study/study.ts';
import { statementWords } from '../words/statement-words.ts';
import { type Cell, cell, listCell, loudCell, paragraph, type Row, row, type Section, tableIfAny } from './block.ts';
import { type CompareContext, wordingOf } from './compare-context.ts';
import { kindName, type PageContext, partName, sayIn } from './page-context.ts';
import { bondLines, isFromOutside, protectionLines } from './statement-cables.ts';

const words = statementWords.lines;
type Line = Study['lines'][number];

/** Cables that come in: what protects each as found and as left, and how long the bond is. Those inside are named. */
export function statementLinesSection(page: CompareContext): Section {
  const pairs = pairsOf(page);
  const shown = pairs.filter(
    ({ before, after }) =>
      (before !== null && isFromOutside(page.before.study, before)) ||
      (after !== null && isFromOutside(page.after.study, after)),
  );
  const inside = pairs.filter((p) => !shown.includes(p)).map((p) => (p.after ?? p.before)!.id);
  const table = tableIfAny({
    id: 'statement-lines',
    caption: sayIn(page.after, words.caption),
    head: [words.line, words.found, words.after[wordingOf(page)], words.bond],
    rows: shown.map((p) => lineRow(page, p)),
  });
  const rest = inside.length === 0 ? [] : [paragraph(sayIn(page.after, words.inside, { list: inside.join(', ') }))];
  const none = shown.length === 0 ? [paragraph(words.none)] : [];
  return { id: 'lines', heading: words.heading, blocks: [...none, ...table, ...rest] };
}

interface LinePair {
  readonly before: Line | null;
  readonly after: Line | null;
}

/** In the order of the numbers of the page. */
function pairsOf({ comparison, before, after }: CompareContext): readonly LinePair[] {
  const now = new Map(comparison.parts.pairs.map((p) => [p.after, p.before]));
  const kept = new Set(now.values());
  const ofAfter = after.study.lines.map((l) => ({
    before: before.study.lines.find((b) => b.id === now.get(l.id)) ?? null,
    after: l,
  }));
  const gone = before.study.lines.filter((l) => !kept.has(l.id)).map((l) => ({ before: l, after: null }));
  const place = ({ before: b, after: a }: LinePair) =>
    Number(a === null ? before.numbers.get(b!.id) : after.numbers.get(a.id)) || 0;
  return [...ofAfter, ...gone].sort((x, y) => place(x) - place(y));
}

function lineRow(page: CompareContext, { before, after }: LinePair): Row {
  const [own, line] = after === null ? [page.before, before!] : [page.after, after];
  const other = before !== null && after !== null && before.kind !== after.kind;
  const kind = (own: PageContext, line: Line | null) =>
    other && line !== null ? [sayIn(own, words.asKind, { kind: kindName(own, line.kind) })] : [];
  return row(
    cell(`${partName(own, line.id)}, ${kindName(own, line.kind)}`),
    sideCell(page.before, before, words.notThere, kind(page.before, before)),
    sideCell(page.after, after, words.gone[wordingOf(page)], kind(page.after, after)),
    after === null ? cell('–') : listCell(bondLines(page.after, after)),
  );
}

/** Nobody may miss that nothing is there. */
function sideCell(page: PageContext, line: Line | null, absent: string, kind: readonly string[]): Cell {
  if (line === null) return cell(absent);
  const lines = [...protectionLines(page, line), ...kind];
  return lines[0] === words.nothing ? loudCell(words.nothing, ...lines.slice(1)) : listCell(lines);
}
