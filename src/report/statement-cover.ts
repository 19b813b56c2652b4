import type { Study } from '../study/study.ts';
import { pageWords } from '../words/page.ts';
import { statementWords } from '../words/statement-words.ts';
import { type CompareContext, notBuilt, wordingOf } from './compare-context.ts';
import { type Cover, cover, type Entry } from './cover.ts';
import { sayIn } from './page-context.ts';

const words = statementWords.cover;

/** Who, where and when, both dates; what the owner left out of the file or keeps back has no row. */
export function statementCover(page: CompareContext): Cover {
  const { study } = page.after;
  const { site } = study;
  const kept = (label: string, value: string | null): readonly Entry[] =>
    value === null || value === '' ? [] : [{ label, values: [value] }];
  const codes = cover(page.after).rows.filter((r) => r.label === pageWords.cover.codes);
  const rows = [
    { label: words.found, values: [dated(page, page.before.study)] },
    { label: words[wordingOf(page)], values: [dated(page, study)] },
    ...kept(words.by, site.prepared.by),
    ...kept(words.for, site.prepared.for),
    ...kept(words.owner, site.owner),
    ...kept(words.address, site.address),
    ...kept(words.permit, site.permit),
    ...codes.map((r) => ({ ...r, label: words.codes })),
  ];
  return {
    kicker: sayIn(page.after, statementWords.kicker[wordingOf(page)]),
    title: site.name ?? pageWords.page.unnamed,
    caption: words.caption,
    rows,
    record: { label: words.files, values: [page.before.study, study].map(recordOf) },
    caution: [sayIn(page.after, words.caution), notBuilt(page)].join(' ').trim(),
  };
}

function dated(page: CompareContext, { site }: Study): string {
  const revision = site.revision === null ? '' : ` (${site.revision})`;
  return sayIn(page.after, words.dated, { date: site.prepared.date ?? words.noDate, revision });
}

/** Half of the checksum tells two files apart; the report has it whole. */
function recordOf({ site }: Study): string {
  return `${site.file}: ${site.checksum.slice(0, 32)}…`;
}
