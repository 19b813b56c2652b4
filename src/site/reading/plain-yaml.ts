import type { Entry, Span, TreeNode } from './tree.ts';

/**
 * Reads the plain YAML that nearly every site file is written in: groups by indent, lists, braces and brackets, text within
 * one line, comments. Gives the tree that the YAML library gives, several times sooner. What is anything else is null and
 * for the library to read: anchors, tags, text over several lines, escapes, keys in quotes, tabs, a key twice, every slip.
 */
export function plainYaml(text: string): TreeNode | null {
  if (/[\t\r\uFEFF]/.test(text)) return null;
  const cursor: Cursor = { text, at: 0, end: 0 };
  const tree = nextLine(cursor) === 0 ? blockMap(cursor, 0) : null;
  return nextLine(cursor) === null ? tree : null;
}

interface Cursor {
  readonly text: string;
  at: number;
  /** Where the last line that says something ends, its line end included; behind the colon where nothing follows one. */
  end: number;
}

/** Levels of braces, columns of indent and characters of a key that no site file has; what is over is for the library. */
const deepest = { braces: 8, indent: 30, key: 1000 };

const emptyLines = /(?: *(?:#[^\n]*)?\n)*(?: *(?:#[^\n]*)?$)?/y;
const spaces = / */y;
const restOfLine = /(?: +#[^\n]*| *)(?:\n|$)/y;
const keyText = /[\p{L}\p{N}_](?:[^\n:#,[\]{}'"&*!|>%@`?\\]*[^\n:#,[\]{}'"&*!|>%@`?\\ ])?(?=:(?: |\n|$))/uy;
const lineText = /(?:[^\n \-?:,[\]{}#&*!|>'"%@`]|-(?=[^\n ]))(?:[^\n:#]|:(?=[^\n ])|(?<=[^\n ])#)*/y;
const textInBraces =
  /(?:[^\n \-?:,[\]{}#&*!|>'"%@`]|-(?=[^\n ,[\]{}]))(?:[^\n:#,[\]{}]|:(?=[^\n ,[\]{}])|(?<=[^\n ])#)*/y;
const quotedText = /'[^\n']*'(?!')|"[^\n"\\]*"/y;
const gapInBraces = /(?: |\n|(?<=[\n ])#[^\n]*)*/y;

/** Goes over what the pattern matches here; null where it does not match. */
function take(cursor: Cursor, pattern: RegExp): string | null {
  pattern.lastIndex = cursor.at;
  const found = pattern.exec(cursor.text);
  if (found === null) return null;
  cursor.at += found[0].length;
  return found[0];
}

/** Goes to the next line that says something; its indent, or null at the end of the text. */
function nextLine(cursor: Cursor): number | null {
  take(cursor, emptyLines);
  if (cursor.at >= cursor.text.length) return null;
  spaces.lastIndex = cursor.at;
  return spaces.exec(cursor.text)![0].length;
}

/** The lines `key: value` at one indent, up to the first that lies further out. */
function blockMap(cursor: Cursor, indent: number): TreeNode | null {
  if (indent > deepest.indent) return null;
  const start = cursor.at + indent;
  const entries: Entry[] = [];
  const keys = new Set<string>();
  let next: number | null = indent;
  for (; next === indent; next = nextLine(cursor)) {
    cursor.at += indent;
    const entry = entryAt(cursor, keys, () => valueOfLine(cursor, indent));
    if (entry === null) return null;
    entries.push(entry);
  }
  return isClosed(cursor, indent, next) ? { is: 'map', entries, braces: false, at: { start, end: cursor.end } } : null;
}

/** Whether a group of lines ends here, with no comment further in behind it, which the library counts to it. */
function isClosed({ text, at, end }: Cursor, indent: number, next: number | null): boolean {
  const comments = text.slice(end, at).match(/^ *(?=#)/gm) ?? [];
  return (next === null || next <= indent) && comments.every((before) => before.length <= indent);
}

/** A key that was not there yet, its colon and its value. */
function entryAt(cursor: Cursor, keys: Set<string>, readValue: () => TreeNode | null): Entry | null {
  const start = cursor.at;
  const key = take(cursor, keyText);
  if (key === null || key.length > deepest.key || keys.has(key.trim())) return null;
  keys.add(key.trim());
  const keyAt = { start, end: cursor.at };
  cursor.at++;
  const value = readValue();
  return value === null ? null : { key: key.trim(), keyAt, value };
}

/** What stands behind the colon of a key, or in the lines below it. */
function valueOfLine(cursor: Cursor, indent: number): TreeNode | null {
  const colonEnd = cursor.at;
  const rest = take(cursor, restOfLine);
  if (rest === null) return inLine(cursor, indent);
  const below = nextLine(cursor);
  if (below !== null && below >= indent) {
    if (isItem(cursor, below)) return blockList(cursor, below);
    const mark = cursor.text[cursor.at + below];
    if (below > indent) return mark === '{' || mark === '[' ? inLine(cursor, indent) : blockMap(cursor, below);
  }
  // Where a blank ends that comments follow is for the library to say.
  if (cursor.text.slice(colonEnd, cursor.at).includes('#')) return null;
  cursor.end = colonEnd + rest.replace('\n', '').length;
  return { is: 'blank', at: { start: cursor.end, end: cursor.end } };
}

function isItem({ text, at }: Cursor, indent: number): boolean {
  return text.startsWith('- ', at + indent);
}

/** The lines `- value` at one indent. */
function blockList(cursor: Cursor, indent: number): TreeNode | null {
  const start = cursor.at + indent;
  const items: TreeNode[] = [];
  let next: number | null = indent;
  for (; next === indent && isItem(cursor, indent); next = nextLine(cursor)) {
    const item = itemAt(cursor, indent);
    if (item === null) return null;
    items.push(item);
  }
  return isClosed(cursor, indent, next) ? { is: 'list', items, at: { start, end: cursor.end } } : null;
}

/** What stands behind the dash of a line; a key there begins a group, the other lines of which lie below the key. */
function itemAt(cursor: Cursor, indent: number): TreeNode | null {
  const lineStart = cursor.at;
  cursor.at += indent + 1;
  take(cursor, spaces);
  keyText.lastIndex = cursor.at;
  if (!keyText.test(cursor.text)) return inLine(cursor, indent);
  const below = cursor.at - lineStart;
  cursor.at = lineStart;
  return blockMap(cursor, below);
}

/** A value with nothing but a comment behind it; only brackets may go on below, further in than the indent. */
function inLine(cursor: Cursor, indent: number): TreeNode | null {
  take(cursor, spaces);
  const value = valueAt(cursor, lineText, indent, 0);
  if (value === null || take(cursor, restOfLine) === null) return null;
  cursor.end = cursor.at;
  return value;
}

function valueAt(cursor: Cursor, plain: RegExp, indent: number, depth: number): TreeNode | null {
  const start = cursor.at;
  const mark = cursor.text[start];
  if (mark === '{') return braces(cursor, indent, depth + 1);
  if (mark === '[') return brackets(cursor, indent, depth + 1);
  const quoted = mark === '"' || mark === "'";
  const found = take(cursor, quoted ? quotedText : plain);
  if (found === null) return null;
  const text = quoted ? found.slice(1, -1) : found.trimEnd();
  if (!quoted) cursor.at = start + text.length;
  const at: Span = { start, end: cursor.at };
  return !quoted && isNothing(text) ? { is: 'blank', at } : { is: 'text', text, quoted, at };
}

function isNothing(text: string): boolean {
  return text === '~' || text.toLowerCase() === 'null';
}

function braces(cursor: Cursor, indent: number, depth: number): TreeNode | null {
  const entries: Entry[] = [];
  const keys = new Set<string>();
  const at = between(cursor, '}', indent, depth, () => {
    const entry = entryAt(cursor, keys, () => {
      if (take(cursor, spaces) === '') return null;
      return valueAt(cursor, textInBraces, indent, depth);
    });
    return entry !== null && entries.push(entry) > 0;
  });
  return at === null ? null : { is: 'map', entries, braces: true, at };
}

function brackets(cursor: Cursor, indent: number, depth: number): TreeNode | null {
  const items: TreeNode[] = [];
  const at = between(cursor, ']', indent, depth, () => {
    const item = valueAt(cursor, textInBraces, indent, depth);
    return item !== null && items.push(item) > 0;
  });
  return at === null ? null : { is: 'list', items, at };
}

/** From an opening mark to the closing one, with commas between the things read. */
function between(cursor: Cursor, closing: string, indent: number, depth: number, read: () => boolean): Span | null {
  const start = cursor.at;
  if (depth > deepest.braces) return null;
  let isOpen = true;
  for (cursor.at++; ; isOpen = true) {
    if (!skipGap(cursor, indent)) return null;
    if (cursor.text[cursor.at] === closing) break;
    if (!isOpen || !read() || !skipGap(cursor, indent)) return null;
    isOpen = cursor.text[cursor.at] === ',';
    if (isOpen) cursor.at++;
    else if (cursor.text[cursor.at] !== closing) return null;
  }
  cursor.at++;
  return { start, end: cursor.at };
}

/** Goes to what comes next between brackets; false where a line there lies no further in than the one that opened them. */
function skipGap(cursor: Cursor, indent: number): boolean {
  const gap = take(cursor, gapInBraces)!;
  const line = gap.lastIndexOf('\n');
  if (line < 0) return true;
  const comments = gap.match(/(?<=\n) *(?=#)/g) ?? [];
  return gap.length - line - 1 > indent && comments.every((before) => before.length > indent);
}
