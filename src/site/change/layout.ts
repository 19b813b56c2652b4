import { isAlias, isCollection, isMap, isScalar, type Pair, Scalar, type YAMLMap } from 'yaml';

/** A piece of the text to be replaced. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Names and values of one group, with the tokens that they were read from. */
export type Group = YAMLMap<unknown, unknown>;
export type Entry = Pair<unknown, unknown>;

export function entryOf(group: Group, key: string): Entry | null {
  return group.items.find((entry) => nameOf(entry) === key) ?? null;
}

export function nameOf({ key }: Entry): string {
  return isScalar(key) ? String(key.value ?? '').trim() : '';
}

/** Where the name begins; -1 where there is none. */
export function startOf({ key }: Entry): number {
  return isScalar(key) ? (key.range?.[0] ?? -1) : -1;
}

/** Behind the colon, and behind an anchor or tag that follows it; behind the name where there is no colon. */
export function afterColon(entry: Entry): number {
  const marks = entry.srcToken?.sep?.filter(({ type }) => ['map-value-ind', 'anchor', 'tag'].includes(type)) ?? [];
  const last = marks.at(-1);
  return last === undefined ? nameEnd(entry) : last.offset + last.source.length;
}

export function hasColon({ srcToken }: Entry): boolean {
  return srcToken?.sep?.some(({ type }) => type === 'map-value-ind') ?? false;
}

function nameEnd({ key }: Entry): number {
  return isScalar(key) ? (key.range?.[1] ?? -1) : -1;
}

/** Whether nothing is typed behind the colon. */
export function isBlank({ value, srcToken }: Entry): boolean {
  return value === null || value === undefined || srcToken?.value == null;
}

/** Written over lines of its own, below its name: a list by dashes, a group by indents, a text behind `|` or `>`. */
export function isBelow({ value }: Entry): boolean {
  return isBlockText(value) || (isCollection(value) && value.flow !== true);
}

function isBlockText(value: unknown): value is Scalar {
  return isScalar(value) && (value.type === Scalar.BLOCK_LITERAL || value.type === Scalar.BLOCK_FOLDED);
}

/** Behind the last character of the value, or of what stands for it; comments and line ends not counted. */
export function endOf(entry: Entry, text: string): number {
  return isBlank(entry) ? afterColon(entry) : Math.max(afterColon(entry), endOfNode(entry.value, text));
}

function endOfNode(node: unknown, text: string): number {
  const end = (node as { range?: readonly number[] | null }).range?.[1] ?? 0;
  if (isBlockText(node)) return text.slice(0, end).trimEnd().length;
  if (isAlias(node) || !isCollection(node) || node.flow === true) return end;
  const last = node.items.at(-1);
  if (isMap(node)) return last === undefined ? end : endOf(last as Entry, text);
  const dash = (
    node.srcToken as { items?: readonly { start: readonly { offset: number }[] }[] } | undefined
  )?.items?.at(-1);
  const afterDash = Math.max(0, ...(dash?.start.map(({ offset }) => offset + 1) ?? []));
  return last === null || last === undefined ? afterDash : Math.max(afterDash, endOfNode(last, text));
}

/** Where the line of an offset begins. */
export function lineStart(text: string, offset: number): number {
  return text.lastIndexOf('\n', offset - 1) + 1;
}

/** Where the line of an offset ends, before what ends it. */
export function lineEnd(text: string, offset: number): number {
  const feed = text.indexOf('\n', offset);
  const end = feed < 0 ? text.length : feed;
  return end > offset && text[end - 1] === '\r' ? end - 1 : end;
}

/** What ends the line of an offset, or the first line where that one is the last. */
export function lineBreak(text: string, offset: number): string {
  const end = lineEnd(text, offset);
  const own = /^\r?\n/.exec(text.slice(end, end + 2));
  return (own ?? /\r?\n/.exec(text))?.[0] ?? '\n';
}

/** Applies edits that do not overlap. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const backwards = [...edits].sort((a, b) => b.start - a.start || b.end - a.end);
  return backwards.reduce((whole, { start, end, text: put }) => whole.slice(0, start) + put + whole.slice(end), text);
}
