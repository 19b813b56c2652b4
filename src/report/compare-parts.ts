import type { ChangedPart, ComparedPart } from '../compare/comparison.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { pageWords } from '../words/page.ts';
import { type Block, type Cell, cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import type { CompareContext } from './compare-context.ts';
import { figure, kindName, type PageContext, partName, partNames, sayIn } from './page-context.ts';
import { byNumber } from './part-schedules.ts';

const words = compareReportWords.parts;

/** Parts that were changed, entry by entry, then what was added and removed, then what is only called otherwise. */
export function comparePartsSection(page: CompareContext): Section {
  const { parts } = page.comparison;
  const counts = {
    added: String(parts.added.length),
    removed: String(parts.removed.length),
    changed: String(parts.changed.length),
    same: String(parts.pairs.length - parts.changed.length),
  };
  return {
    id: 'parts',
    heading: words.heading,
    blocks: [
      paragraph(sayIn(page.after, words.intro, counts)),
      ...changedTable(page),
      ...partTable(page.after, 'added', parts.added),
      ...partTable(page.before, 'removed', parts.removed),
      ...otherNames(page),
    ],
  };
}

function changedTable(page: CompareContext): readonly Block[] {
  return tableIfAny({
    id: 'parts-changed',
    look: 'wide',
    caption: words.changed,
    head: [words.part, words.field, page.sides.before, page.sides.after],
    rows: byNumber(
      page.after,
      page.comparison.parts.changed.map((c) => ({ ...c, id: c.after.id })),
    ).flatMap((c) => changedRows(page, c)),
  });
}

/** A row for each entry; the name stands in each, since a page may break between them. */
function changedRows(page: CompareContext, c: ChangedPart) {
  const names = [...new Set([partName(page.before, c.before.id), partName(page.after, c.after.id)])].join(' → ');
  const notes = notesOf(page.after, c);
  const rows = c.fields.map((f, i) =>
    row(
      cell(names, i === 0 ? notes : null),
      cell(f.field.replaceAll('_', ' ')),
      typedCell(f.before),
      typedCell(f.after),
    ),
  );
  return rows.length > 0 ? rows : [row(cell(names), cell(notes), cell('–'), cell('–'))];
}

function typedCell(text: string | null): Cell {
  return cell(text ?? words.notTyped);
}

function notesOf(page: PageContext, { movedM, routeChanged, presence }: ChangedPart): string {
  const moved = movedM === null || movedM === 0 ? '' : sayIn(page, words.moved, { movedM });
  return [presence === null ? '' : words[presence], moved, routeChanged ? words.rerouted : '']
    .filter((t) => t !== '')
    .join('; ');
}

function partTable(page: PageContext, which: 'added' | 'removed', parts: readonly ComparedPart[]): readonly Block[] {
  return tableIfAny({
    id: `parts-${which}`,
    look: 'wide',
    caption: words[which],
    head: [words.part, pageWords.page.kind, words.details],
    rows: byNumber(page, parts).map((p) =>
      row(cell(partName(page, p.id)), cell(kindOf(page, p), p.count > 1 ? `× ${p.count}` : null), cell(typed(page, p))),
    ),
  });
}

/** Of a conductor its task, where the study knows it. */
function kindOf(page: PageContext, p: ComparedPart): string {
  if (p.section !== 'conductors' || p.kind !== 'unknown') return kindName(page, p.kind);
  const role = page.study.conductors.find((c) => c.id === p.id)?.role ?? 'unknown';
  return role === 'unknown' ? words.conductor : kindName(page, role);
}

/** What the owner typed, but for the kind and the note's photographs. */
function typed(page: PageContext, p: ComparedPart): string {
  const entries = Object.entries(p.typed).filter(([field]) => !['kind', 'photo'].includes(field));
  const text = entries.map(([field, value]) => `${field.replaceAll('_', ' ')} ${value}`).join(', ');
  const height = p.heightM === null || 'height' in p.typed ? '' : figure(page, p.heightM, 'length');
  return [text, height].filter((t) => t !== '').join(', ') || '–';
}

function otherNames(page: CompareContext): readonly Block[] {
  const { renamed, splits, joined } = page.comparison.parts;
  const list = renamed
    .map((r) =>
      sayIn(page.after, words.renamedOne, {
        before: partName(page.before, r.before),
        after: partName(page.after, r.after),
      }),
    )
    .join('; ');
  const items = [
    ...(list === '' ? [] : [sayIn(page.after, words.renamed, { list })]),
    ...splits.map((s) =>
      sayIn(page.after, words.split, {
        before: partName(page.before, s.before),
        after: partNames(page.after, s.after),
      }),
    ),
    ...joined.map((j) =>
      sayIn(page.after, words.joined, {
        before: partNames(page.before, j.before),
        after: partName(page.after, j.after),
      }),
    ),
  ];
  return items.length === 0 ? [] : [{ is: 'list', ordered: false, items }];
}
