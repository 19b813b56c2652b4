import type { Values } from '../report.ts';
import type { Span } from '../tree.ts';
import type { Lexeme } from './lexemes.ts';

/** Text to put in place of a span. */
export interface Edit extends Span {
  readonly text: string;
}

/** Something that YAML takes in another way than it was meant, and the edits that say what was meant. */
export interface Slip {
  readonly key: string;
  readonly at: Span;
  readonly values: Values;
  readonly edits: readonly Edit[];
}

export function slip(key: string, at: Span, values: Values, edits: readonly Edit[]): Slip {
  return { key, at: { start: at.start, end: at.end }, values, edits };
}

/** A text and its pieces, and the ways about in them. */
export interface Source {
  readonly text: string;
  readonly lexemes: readonly Lexeme[];
  /** Piece → the nearest one before it that is more than space, line end or comment; -1: there is none. */
  readonly previous: Int32Array;
  /** The same after it. */
  readonly next: Int32Array;
}

const blank: readonly string[] = ['space', 'newline', 'comment'];

export function sourceOf(text: string, lexemes: readonly Lexeme[]): Source {
  const previous = new Int32Array(lexemes.length + 1);
  const next = new Int32Array(lexemes.length + 1);
  let last = -1;
  for (let i = 0; i <= lexemes.length; i++) {
    previous[i] = last;
    if (i < lexemes.length && !blank.includes(lexemes[i]!.kind)) last = i;
  }
  last = -1;
  for (let i = lexemes.length - 1; i >= 0; i--) {
    next[i] = last;
    if (!blank.includes(lexemes[i]!.kind)) last = i;
  }
  return { text, lexemes, previous, next };
}

/** A file with more slips than this has one cause, not a hundred. */
export const slipLimit = 100;

/** The slips that `find` sees at each piece, without those inside text that is replaced already. */
export function slipsAt(source: Source, find: (lexeme: Lexeme, i: number) => readonly Slip[]): readonly Slip[] {
  const slips: Slip[] = [];
  let until = 0;
  for (let i = 0; i < source.lexemes.length && slips.length < slipLimit; i++) {
    const lexeme = source.lexemes[i]!;
    if (lexeme.start < until) continue;
    for (const found of find(lexeme, i)) {
      slips.push(found);
      for (const { end } of found.edits) until = Math.max(until, end);
    }
  }
  return slips;
}

/** The nearest piece before on the same line that is more than space; null: there is none. */
export function beforeOnLine({ lexemes }: Source, i: number): number | null {
  for (let j = i - 1; j >= 0; j--) {
    const { kind } = lexemes[j]!;
    if (kind === 'newline') return null;
    if (kind !== 'space') return j;
  }
  return null;
}

/** The nearest piece before, on this line or an earlier one. */
export function before({ previous }: Source, i: number): number | null {
  const found = previous[i] ?? -1;
  return found < 0 ? null : found;
}

/** The nearest piece after, on this line or a later one. */
export function after({ next }: Source, i: number): number | null {
  const found = next[i] ?? -1;
  return found < 0 ? null : found;
}

/** Whether a value can end at piece `i`: a comma or a closing bracket follows, or nothing more on the line. */
export function endsAfter({ lexemes }: Source, i: number): boolean {
  for (let j = i + 1; j < lexemes.length; j++) {
    const { kind } = lexemes[j]!;
    if (kind !== 'space') return ['newline', 'comment', 'comma', 'close', 'given up'].includes(kind);
  }
  return true;
}

/** Offset at which the line of an offset starts. */
export function lineStart(text: string, at: number): number {
  return at === 0 ? 0 : text.lastIndexOf('\n', at - 1) + 1;
}

/** Offset of the end of the line, before its line end. */
export function lineEnd(text: string, at: number): number {
  const end = text.indexOf('\n', at);
  const last = end < 0 ? text.length : end;
  return last > at && text[last - 1] === '\r' ? last - 1 : last;
}

/** How far in the line of an offset starts. */
export function indentAt(text: string, at: number): number {
  const start = lineStart(text, at);
  return /^ */.exec(text.slice(start, start + 500))![0].length;
}

/** The text of a value without what is a comment of its own behind it. */
export function withoutComment(text: string): string {
  return text.replace(/\s+#(?!\d).*$/s, '').trimEnd();
}

/** A value in quotes, as it has to be typed. */
export function quoted(value: string): string {
  if (!/["\\]/.test(value)) return `"${value}"`;
  return `'${value.replaceAll("'", "''")}'`;
}
