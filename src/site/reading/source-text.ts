import type { SourcePlace } from '../site.ts';

/** A text in which offsets are turned into lines and columns. */
export interface SourceText {
  readonly text: string;
  /** 1-based line and column; a column is a character (code point) of the line. */
  readonly placeOf: (offset: number) => SourcePlace;
  /** The text of a 1-based line, without its end. */
  readonly lineText: (line: number) => string;
}

export function sourceText(text: string): SourceText {
  const starts = lineStarts(text);
  const pairs = pairStarts(text);
  const startOf = (line: number) => starts[line - 1] ?? text.length;
  const lineText = (line: number) => text.slice(startOf(line), starts[line] ?? text.length).replace(/\r?\n$|\r$/, '');
  const placeOf = (offset: number): SourcePlace => {
    const line = lineOf(starts, Math.min(Math.max(offset, 0), text.length));
    const start = startOf(line);
    const end = Math.max(offset, start);
    return { line, column: end - start - (countBelow(pairs, end) - countBelow(pairs, start)) + 1 };
  };
  return { text, placeOf, lineText };
}

function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}

/** Offsets of the characters that take two places in the text. */
function pairStarts(text: string): readonly number[] {
  return [...text.matchAll(/[\uD800-\uDBFF][\uDC00-\uDFFF]/g)].map(({ index }) => index);
}

/** How many of the offsets, which are in order, lie before one. */
function countBelow(offsets: readonly number[], offset: number): number {
  let low = 0;
  let high = offsets.length;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (offsets[middle]! < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Binary search for the last line that starts at or before the offset. */
function lineOf(starts: readonly number[], offset: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (starts[middle]! <= offset) low = middle;
    else high = middle - 1;
  }
  return low + 1;
}
