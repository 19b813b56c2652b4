import { signatureWords } from '../words/caution-words.ts';
import { type LeaveOut, leaveOutKinds, statementWords } from '../words/statement-words.ts';
import { type Block, cell, paragraph, row, type Section } from './block.ts';
import { type CompareContext, wordingOf } from './compare-context.ts';
import { partNames, sayIn } from './page-context.ts';

/** What this page does not hold: what the owner chose, and what there was no room for. Nothing is left out silently. */
export function leftOutSection(page: CompareContext, leaveOut: ReadonlySet<LeaveOut>): Section {
  const words = statementWords.leftOut;
  const chosen = leaveOutKinds.filter((k) => leaveOut.has(k)).map((k) => words.kinds[k]);
  const said = chosen.length === 0 ? words.nobody : sayIn(page.after, words.chosen, { list: chosen.join('; ') });
  const photos = leaveOut.has('photos') ? [] : [photosText(page)];
  return { id: 'left-out', heading: words.heading, blocks: [paragraph([said, ...photos, words.room].join(' '))] };
}

/** By their names, with what they show. */
function photosText(page: CompareContext): string {
  const words = statementWords.leftOut;
  const shows = new Map<string, Set<string>>();
  for (const own of [page.before, page.after]) {
    for (const part of own.study.parts) {
      for (const name of part.photos) shows.set(name, (shows.get(name) ?? new Set()).add(partNames(own, [part.id])));
    }
  }
  const list = [...shows]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, parts]) => `${name} (${[...parts].join(', ')})`);
  return list.length === 0 ? words.noPhotos : sayIn(page.after, words.photos, { list: list.join(', ') });
}

export function statementCautionsSection(page: CompareContext): Section {
  const { heading, list } = statementWords.cautions;
  return {
    id: 'cautions',
    heading,
    blocks: [{ is: 'list', ordered: false, items: list.map((c) => sayIn(page.after, c)) }],
  };
}

/** Empty lines to sign on: the program signs nothing. */
export function statementSignaturesSection(page: CompareContext): Section {
  const { heading, intro } = statementWords.signatures;
  const { role, name, licence, signature, date, roles } = signatureWords;
  const table: Block = {
    is: 'table',
    id: 'signature-table',
    look: 'signatures',
    caption: intro[wordingOf(page)],
    head: [role, name, licence, signature, date],
    rows: roles.map((r) => row(cell(sayIn(page.after, r)), cell(), cell(), cell(), cell())),
  };
  return { id: 'signatures', heading, blocks: [table] };
}
