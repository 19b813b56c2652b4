import type { Edit } from './slip.ts';

/** A text with edits made. */
export interface CorrectedText {
  readonly text: string;
  /** Offset in the edited text → offset in the text as it was. Where text was put in, the start of its edit. */
  readonly originalOf: (offset: number) => number;
}

/** Makes edits that do not overlap. */
export function correctedText(original: string, edits: readonly Edit[]): CorrectedText {
  const sorted = [...edits].sort((a, b) => a.start - b.start || a.end - b.end);
  const pieces: string[] = [];
  /** From where in the edited text on, offsets are this much further on in the original. */
  const shifts: { readonly from: number; readonly by: number; readonly least: number }[] = [];
  let at = 0;
  let length = 0;
  for (const { start, end, text } of sorted) {
    pieces.push(original.slice(at, start), text);
    shifts.push({ from: length + start - at, by: 0, least: start });
    length += start - at + text.length;
    shifts.push({ from: length, by: end - length, least: -1 });
    at = end;
  }
  pieces.push(original.slice(at));
  return { text: pieces.join(''), originalOf: (offset) => originalOf(shifts, offset) };
}

function originalOf(shifts: readonly { from: number; by: number; least: number }[], offset: number): number {
  let low = -1;
  let high = shifts.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (shifts[middle]!.from <= offset) low = middle;
    else high = middle - 1;
  }
  const shift = shifts[low];
  if (shift === undefined) return offset;
  return shift.least >= 0 ? shift.least : offset + shift.by;
}
