import type { Study } from '../study/study.ts';
import type { StudyStrike, StudyStrikeDifference } from '../study/study-strike.ts';
import { formatQuantity } from '../units/format.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, paragraph } from './block.ts';
import { type PageContext, partName, partNames, sayIn } from './page-context.ts';

/** One strike on a page, and which of several it is. */
export interface StrikeView {
  readonly page: PageContext;
  readonly study: Study;
  readonly strike: StudyStrike;
  /** `2`; null: the only one. */
  readonly mark: string | null;
  /** Begins the id of each table and figure. */
  readonly id: string;
}

/** By this name the study calls distant soil. */
const remoteEarth = 'remote earth';

function isRemote(part: string): boolean {
  return part === remoteEarth;
}

/** Number and name of a part, or the region's word for distant soil. */
export function endName({ page }: StrikeView, part: string): string {
  return isRemote(part) ? sayIn(page, strikeReportWords.remote) : partName(page, part);
}

/** A caption that tells one strike's table from another's. */
export function captionOf({ page, mark }: StrikeView, caption: string): string {
  const says = sayIn(page, caption);
  return mark === null ? says : sayIn(page, strikeReportWords.ofSeveral, { caption: says, mark });
}

/** Volts with the marks of a difference: `96.4 kV *`. */
export function markedVolt(peakV: number, difference: StudyStrikeDifference): string {
  const marks = marksOf(difference);
  return `${volt(peakV)}${marks === '' ? '' : ` ${marks}`}`;
}

/** `*` beyond the range, `†` upper estimate, `‡` against distant soil, `§` a range of couplings, `¶` with travel time. */
export function marksOf(difference: StudyStrikeDifference): string {
  const { isBeyond, isBracketed } = difference;
  const marks = [isBeyond, isEstimate(difference), isAgainstRemote(difference), isBracketed, isChain(difference)];
  return ['*', '†', '‡', '§', '¶'].filter((_, i) => marks[i]).join('');
}

/** Its way is too long for the front, and cut into sections in which waves travel. */
export function isChain({ lumpedV }: StudyStrikeDifference): boolean {
  return lumpedV != null;
}

/** No cable leads to distant soil, so that nothing against it is an estimate of what one would see. */
export function isEstimate(difference: StudyStrikeDifference): boolean {
  return difference.route === null && !isAgainstRemote(difference);
}

export function isAgainstRemote({ a, b }: StudyStrikeDifference): boolean {
  return isRemote(a) || isRemote(b);
}

export function volt(peakV: number): string {
  return formatQuantity(peakV, 'voltage', 'si') ?? '';
}

export function ampereOf(peakA: number): string {
  return formatQuantity(peakA, 'current', 'si') ?? '';
}

export function time(atS: number): string {
  return formatQuantity(atS, 'time', 'si') ?? '';
}

/** A longer list is a wall of text. */
const mostNames = 24;

/** Names of parts, and how many more there are. */
export function someNames({ page }: StrikeView, ids: readonly string[]): string {
  const list = partNames(page, ids.slice(0, mostNames));
  const more = ids.length - mostNames;
  return more <= 0 ? list : sayIn(page, strikeReportWords.andMore, { list, more });
}

/** Where a table leaves rows out: who has them all. */
export function restBlocks({ page }: StrikeView, all: number, shown: number): readonly Block[] {
  return all <= shown ? [] : [paragraph(sayIn(page, strikeReportWords.others, { all }))];
}

/** The greatest first, then by id. */
export function byGreatest<T>(all: readonly T[], size: (one: T) => number, id: (one: T) => string): readonly T[] {
  return [...all].sort((x, y) => size(y) - size(x) || (id(x) < id(y) ? -1 : 1));
}
