import type { Study } from '../study/study.ts';
import { earthOhmText } from '../words/earth-ohm.ts';
import { statementWords } from '../words/statement-words.ts';
import { cell, paragraph, type Row, row, type Section, tableIfAny } from './block.ts';
import { type CompareContext, wordingOf } from './compare-context.ts';
import { boundedFigure, kindName, partName, partNames, sayIn } from './page-context.ts';
import { typedDetails } from './typed-details.ts';

const words = statementWords.electrodes;
type Electrode = Study['earth']['electrodes'][number];

interface Entry {
  readonly names: string;
  readonly details: string;
  readonly known: string;
  readonly ohm: string;
  readonly how: string;
}

/** Electrodes as left, those alike in every column in one row; whether each figure was measured; what was taken out. */
export function statementElectrodesSection(page: CompareContext): Section {
  const entries = page.after.study.earth.electrodes.map((e) => entryOf(page, e));
  const alike = new Map<string, Entry[]>();
  for (const e of entries) {
    const key = JSON.stringify([e.details, e.known, e.ohm, e.how]);
    alike.set(key, [...(alike.get(key) ?? []), e]);
  }
  const table = tableIfAny({
    id: 'statement-electrodes',
    caption: sayIn(page.after, words.caption[wordingOf(page)]),
    head: [sayIn(page.after, words.name), words.details, words.known, words.ohm, words.how],
    rows: [...alike.values()].map(rowOf),
  });
  const none = entries.length === 0 ? [paragraph(words.none)] : [];
  const heading = sayIn(page.after, words.heading);
  return { id: 'electrodes', heading, blocks: [...none, ...table, paragraph(notes(page))] };
}

function rowOf(same: readonly Entry[]): Row {
  const [first] = same;
  return row(
    cell(same.map((e) => e.names).join(', ')),
    cell(first!.details),
    cell(first!.known),
    cell(first!.ohm),
    cell(first!.how),
  );
}

function entryOf(page: CompareContext, e: Electrode): Entry {
  const part = page.after.parts.get(e.id);
  const fate = words.fate[wordingOf(page)][page.union.fates.get(e.id) ?? 'same'];
  const kind = part === undefined ? '' : kindName(page.after, part.kind);
  const count = part !== undefined && part.count > 1 ? ` × ${part.count}` : '';
  const details = part === undefined ? '' : typedDetails(page.after, part);
  const known = part === undefined ? '' : part.known;
  return {
    names: partName(page.after, e.id),
    details: [`${kind}${count}`, details].filter((t) => t !== '').join(', '),
    known: [Object.hasOwn(words.knownAs, known) ? words.knownAs[known as keyof typeof words.knownAs] : known, fate]
      .filter((t) => t !== '')
      .join(', '),
    ohm: earthOhmText(e.aloneOhm) ?? words.unknown,
    how: howKnown(page, e),
  };
}

/** A figure is measured only where a reading of this electrode alone stands in the file. */
function howKnown(page: CompareContext, e: Electrode): string {
  if (page.after.study.earth.soilOfElectrodes.some((s) => s.electrode === e.id)) return words.measured;
  const before = page.comparison.parts.pairs.find((p) => p.after === e.id)?.before;
  const found = page.before.study.earth.soilOfElectrodes.find((s) => s.electrode === before);
  const how = { computed: words.workedOut, stated: words.stated, unknown: words.unknown }[e.how];
  if (found === undefined) return how;
  const ohm = boundedFigure(page.after, found.measuredOhm, 'resistance');
  return `${how}; ${sayIn(page.after, words.measuredFound, { ohm })}`;
}

/** What is gone, and how the soil behind the figures is known. */
function notes(page: CompareContext): string {
  const gone = page.comparison.parts.removed.filter((p) => p.section === 'electrodes').map((p) => p.id);
  const { soil } = page.after.study.earth;
  return [
    words.workedOutNote,
    gone.length === 0 ? '' : sayIn(page.after, words.gone[wordingOf(page)], { list: partNames(page.before, gone) }),
    sayIn(page.after, words.soil, { known: soil === null ? words.unknown : soil.known }),
  ]
    .filter((t) => t !== '')
    .join(' ');
}
