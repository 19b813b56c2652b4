import { pageWords } from '../words/page.ts';
import { kindName, type PageContext, partName, sayIn } from './page-context.ts';

export interface Cover {
  readonly kicker: string;
  readonly title: string;
  readonly caption: string;
  readonly rows: readonly Entry[];
  /** Which file this is of, over the whole width. */
  readonly record: Entry;
  readonly caution: string;
}

const words = pageWords.cover;

/** The title block. What the owner left out of the file is left out here, apart from the codes. */
export function cover(page: PageContext): Cover {
  const rows = [...subject(page), ...people(page), ...basis(page)];
  return {
    kicker: sayIn(page, words.kicker),
    title: page.study.site.name ?? pageWords.page.unnamed,
    caption: words.caption,
    rows: rows.filter((r) => r.values.length > 0).map(({ label, values }) => ({ label: sayIn(page, label), values })),
    record: { label: words.record, values: [page.study.site.file, page.study.site.checksum] },
    caution: sayIn(page, words.caution),
  };
}

export type Entry = { readonly label: string; readonly values: readonly string[] };

function subject({ study }: PageContext): readonly Entry[] {
  return [
    entry(words.state, stateName(study.state)),
    entry(words.date, study.site.prepared.date),
    entry(words.revision, study.site.revision),
    entry(words.address, study.site.address),
  ];
}

function people({ study: { site } }: PageContext): readonly Entry[] {
  return [
    entry(words.owner, site.owner),
    entry(words.permit, site.permit),
    entry(words.preparedBy, site.prepared.by),
    entry(words.preparedFor, site.prepared.for),
  ];
}

function basis(page: PageContext): readonly Entry[] {
  const { site, tool } = page.study;
  return [
    { label: words.codes, values: codes(page) },
    entry(words.region, kindName(page, site.region)),
    entry(words.service, partNameOrWord(page, site.service)),
    entry(words.supply, kindName(page, site.supply)),
    entry(words.claims, site.claims),
    entry(words.temporary, site.temporary === 'yes' ? 'yes' : null),
    entry(words.tool, `${tool.name} ${tool.version}`),
  ];
}

function entry(label: string, value: string | null): Entry {
  return { label, values: value === null || value === '' ? [] : [value] };
}

function codes(page: PageContext): readonly string[] {
  const all = page.study.codes.map((c) => {
    const edition = c.edition === null ? null : sayIn(page, pageWords.findings.edition, { edition: c.edition });
    const amendments = c.amendments === null ? null : sayIn(page, words.amendments, { text: c.amendments });
    return [c.document, edition, amendments].filter((t) => t !== null).join(', ');
  });
  return all.length === 0 ? [words.noCodes] : all;
}

/** `none` and `unknown` are words of the file format, not parts. */
function partNameOrWord(page: PageContext, service: string): string {
  return page.numbers.has(service) ? partName(page, service) : kindName(page, service);
}

/** The state as typed has no sentence of its own. */
export function stateName(state: { readonly id: string; readonly says: string | null }): string {
  if (state.id === 'as typed') return words.asTyped;
  return state.says === null ? state.id : `${state.id}: ${state.says}`;
}
