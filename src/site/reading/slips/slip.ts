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
}

const blank: readonly string[] = ['space', 'newline', 'comment'];

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
export function before({ lexemes }: Source, i: number): number | null {
  for (let j = i - 1; j >= 0; j--) if (!blank.includes(lexemes[j]!.kind)) return j;
  return null;
}

/** The nearest piece after, on this line or a later one. */
export function after({ lexemes }: Source, i: number): number | null {
  for (let j = i + 1; j < lexemes.length; j++) if (!blank.includes(lexemes[j]!.kind)) return j;
  return null;
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
