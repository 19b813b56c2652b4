import { itemNumbers, partOfPoint } from '../drawing/item-numbers.ts';
import { speechOf } from '../drawing/speech.ts';
import type { Bounded, Study, StudyPart, StudySource } from '../study/study.ts';
import type { Dimension } from '../units/dimension.ts';
import { formatQuantity } from '../units/format.ts';
import type { Interval } from '../units/interval.ts';
import { kindWords } from '../words/kind-words.ts';
import { pageWords } from '../words/page.ts';
import { type Speech, say, type Values } from '../words/say.ts';

/** How one page speaks: terms and units of the study's region, numbers of its parts. */
export interface PageContext {
  readonly study: Study;
  readonly speech: Speech;
  readonly numbers: ReadonlyMap<string, string>;
  readonly parts: ReadonlyMap<string, StudyPart>;
  /** Number under which a section of the page stands, by its id; sections not on the page are left out. */
  readonly sectionNumber: (id: string) => string;
}

export function pageContext(study: Study, sectionIds: readonly string[]): PageContext {
  return {
    study,
    speech: speechOf(study),
    numbers: itemNumbers(study),
    parts: new Map(study.parts.map((p) => [p.id, p])),
    sectionNumber: (id) => String(sectionIds.indexOf(id) + 1),
  };
}

export function sayIn(page: PageContext, template: string, values: Values = {}): string {
  return say(template, values, page.speech);
}

/** A figure or range in both unit systems, the site's own first; 'unknown' where nothing is known. */
export function figure(page: PageContext, value: number | Interval | null, dimension: Dimension): string {
  const system = page.speech.unitsFirst === 'us' ? 'both-us-first' : 'both-si-first';
  return formatQuantity(open(value), dimension, system) ?? pageWords.page.unknown;
}

/** The bounds of a figure, which hangs on soil and is therefore never given to four digits; null: unknown. */
export function boundedFigure(page: PageContext, value: Bounded | null, dimension: Dimension): string {
  return figure(page, value === null ? null : { low: value.low, high: value.high ?? Infinity }, dimension);
}

/** A study read back from JSON has null for an end that is open. */
function open(value: number | Interval | null): number | Interval | null {
  if (value === null || typeof value === 'number') return value;
  return { low: value.low, high: (value.high as number | null) ?? Infinity };
}

/** Number and name of a part or of a point on it: `7 tower@45 ft`. */
export function partName(page: PageContext, point: string): string {
  const number = page.numbers.get(point) ?? page.numbers.get(partOfPoint(point));
  return number === undefined ? point : `${number} ${point}`;
}

export function partNames(page: PageContext, points: readonly string[]): string {
  return points.map((p) => partName(page, p)).join(', ');
}

export function numberOf(page: PageContext, id: string): string {
  return page.numbers.get(id) ?? '–';
}

/** What the owner noted about a part; null where nothing was. */
export function noteOf(page: PageContext, id: string): string | null {
  return page.parts.get(id)?.note ?? null;
}

/** A kind, role or region of the file format in the region's words; a kind of the owner's own stands as typed. */
export function kindName(page: PageContext, kind: string | null): string {
  if (kind === null) return pageWords.page.unknown;
  return Object.hasOwn(kindWords, kind) ? sayIn(page, kindWords[kind]!) : kind;
}

/** Document, edition and clause in one line. */
export function clauseName(page: PageContext, source: StudySource): string {
  const words = pageWords.findings;
  const edition = source.edition === null ? null : sayIn(page, words.edition, { edition: source.edition });
  const clause = source.clause === null ? null : sayIn(page, words.clause, { clause: source.clause });
  return [source.document, edition, clause].filter((t) => t !== null).join(', ');
}

/** Whether somebody else's document stands behind a rule. */
export function hasDocument(source: StudySource): boolean {
  return source.provenance !== 'ours' && source.document !== 'common practice, no source';
}

export function provenanceName(source: StudySource): string {
  return pageWords.findings.provenance[source.provenance];
}
