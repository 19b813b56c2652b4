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
  // Only where two code units make one character does a column need counting.
  const hasPairs = /[\uD800-\uDBFF]/.test(text);
  const startOf = (line: number) => starts[line - 1] ?? text.length;
  const lineText = (line: number) => text.slice(startOf(line), starts[line] ?? text.length).replace(/\r?\n$|\r$/, '');
  const placeOf = (offset: number): SourcePlace => {
    const line = lineOf(starts, Math.min(Math.max(offset, 0), text.length));
    const before = text.slice(startOf(line), offset);
    return { line, column: (hasPairs ? [...before].length : before.length) + 1 };
  };
  return { text, placeOf, lineText };
}

function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
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
