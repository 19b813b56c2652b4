import {
  afterColon,
  type Edit,
  type Entry,
  endOf,
  type Group,
  hasColon,
  isBelow,
  isBlank,
  lineBreak,
  lineEnd,
  lineStart,
  startOf,
} from './layout.ts';

/** Edits of the text of one group; null where it is laid out in a way that cannot be edited line by line. */
export type Edits = readonly Edit[] | null;

/** Adds an entry, written as it is, behind the last of a group. */
export function addEntry(text: string, group: Group, entry: string): Edits {
  const last = group.items.at(-1);
  if (group.flow === true) {
    const at = last === undefined ? (group.range?.[0] ?? 0) + 1 : endOf(last, text);
    return [{ start: at, end: at, text: `${last === undefined ? '' : ', '}${entry}` }];
  }
  if (last === undefined) return null;
  const indent = indentOf(text, last);
  const end = endOf(last, text);
  if (indent === null || !endsLine(text, end)) return null;
  const at = lineEnd(text, end);
  return [{ start: at, end: at, text: `${lineBreak(text, at)}${indent}${entry}` }];
}

/** Puts another value in place of an entry's. A comment on the line of the name stays. */
export function replaceValue(text: string, entry: Entry, value: string): Edits {
  const at = afterColon(entry);
  if (isBlank(entry)) return [{ start: at, end: at, text: `${hasColon(entry) ? '' : ':'} ${value}` }];
  const { value: node } = entry;
  const start = (node as { range?: readonly number[] | null }).range?.[0];
  if (start === undefined) return null;
  const end = endOf(entry, text);
  if (!isBelow(entry)) return [{ start, end, text: value }];
  if (!endsLine(text, end)) return null;
  const first = lineEnd(text, at);
  const here = { start: at, end: at, text: ` ${value}` };
  if (start > first) return [here, { start: first, end: lineEnd(text, end), text: '' }];
  return [{ start, end: lineEnd(text, end), text: value }];
}

/** Takes an entry out, with the comment on its line; comments above it stay. */
export function dropEntry(text: string, group: Group, entry: Entry): Edits {
  return group.flow === true ? dropFromBraces(text, group, entry) : dropLines(text, entry);
}

function dropLines(text: string, entry: Entry): Edits {
  const end = endOf(entry, text);
  if (indentOf(text, entry) === null || !endsLine(text, end)) return null;
  const stop = lineEnd(text, end);
  return [{ start: lineStart(text, startOf(entry)), end: stop + lineBreakAt(text, stop), text: '' }];
}

function lineBreakAt(text: string, offset: number): number {
  return /^\r?\n/.exec(text.slice(offset, offset + 2))?.[0].length ?? 0;
}

/** With the comma behind it, or the one before it where it is the last; with its line where nothing else stands there. */
function dropFromBraces(text: string, group: Group, entry: Entry): Edits {
  const start = startOf(entry);
  const end = endOf(entry, text);
  const [before, behind] = commasAround(group, entry);
  if (behind !== null) return [dropWithComma(text, start, end, behind)];
  if (before === null) return [{ start, end, text: '' }];
  if (text.slice(before + 1, start).trim() === '') return [{ start: before, end, text: '' }];
  return [
    { start: before, end: before + 1, text: '' },
    { start, end, text: '' },
  ];
}

function dropWithComma(text: string, start: number, end: number, comma: number): Edit {
  const between = text.slice(end, comma).trim() === '' ? '' : text.slice(end, comma);
  const stop = lineEnd(text, comma);
  const line = lineStart(text, start);
  const alone = text.slice(line, start).trim() === '' && text.slice(comma + 1, stop).trim() === '';
  if (alone && between === '') return { start: line, end: stop + lineBreakAt(text, stop), text: '' };
  const gap = /^[ \t]*/.exec(text.slice(comma + 1, stop))?.[0].length ?? 0;
  return { start, end: comma + 1 + gap, text: between };
}

type Token = { readonly start: readonly { readonly type: string; readonly offset: number }[] };

/** Offsets of the commas before and behind an entry; null: none. */
function commasAround(group: Group, entry: Entry): readonly [number | null, number | null] {
  const items = (group.srcToken as { items?: readonly Token[] } | undefined)?.items ?? [];
  const index = items.indexOf(entry.srcToken as Token);
  const commaOf = (item: Token | undefined) => item?.start.find(({ type }) => type === 'comma')?.offset ?? null;
  return [commaOf(items[index]), commaOf(items[index + 1])];
}

/** The blanks before a name that stands first on its line; null where something else stands there. */
export function indentOf(text: string, entry: Entry): string | null {
  const start = startOf(entry);
  if (start < 0) return null;
  const before = text.slice(lineStart(text, start), start);
  return before.replace('\uFEFF', '').trim() === '' ? before.replace('\uFEFF', '') : null;
}

/** Whether nothing but a comment follows on the line. */
function endsLine(text: string, offset: number): boolean {
  return /^[ \t]*(?:$|#)/.test(text.slice(offset, lineEnd(text, offset)));
}
