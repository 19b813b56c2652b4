import type { Lexeme } from './lexemes.ts';
import {
  after,
  beforeOnLine,
  endsAfter,
  indentAt,
  lineEnd,
  lineStart,
  quoted,
  type Slip,
  type Source,
  slip,
  slipsAt,
  withoutComment,
} from './slip.ts';

/** Marks at the start of a value that mean something else to YAML: `> 1000 ohm`, `?`, `*`, `-`, `@`, `%`, `&`, `!`. */
export function markSlips(source: Source): readonly Slip[] {
  const repeated = new Set(source.lexemes.filter((l) => l.kind === 'alias').map((l) => l.text.slice(1)));
  return slipsAt(source, (lexeme, i) => [
    ...unknownMark(source, lexeme, i),
    ...headerSlip(source, lexeme, i),
    ...reservedMark(source, lexeme, i),
    ...questionMark(source, lexeme, i),
    ...swallowedWord(source, lexeme, i, repeated),
  ]);
}

const unknownMarks = /^(?:\?+|\*|-{1,2})$/;

/** `?`, `*` or `-` alone where a value is due: nobody knows. */
function unknownMark(source: Source, lexeme: Lexeme, i: number): readonly Slip[] {
  if (!['question', 'dash', 'alias', 'plain'].includes(lexeme.kind) || !unknownMarks.test(lexeme.text)) return [];
  if (!isValuePlace(source, i) || !endsAfter(source, i)) return [];
  return [slip('mark-for-unknown', lexeme, { mark: lexeme.text }, [{ ...spanOf(lexeme), text: 'unknown' }])];
}

/** Behind a colon, or an item between square brackets. */
function isValuePlace(source: Source, i: number): boolean {
  const previous = beforeOnLine(source, i);
  if (previous === null) return false;
  const { kind } = source.lexemes[previous]!;
  return kind === 'colon' || (source.lexemes[i]!.inside === '[' && (kind === 'comma' || kind === 'open'));
}

/** `> 1000 ohm`: more than the mark stands on the line; or `>5`, and no lines of text follow. */
function headerSlip(source: Source, lexeme: Lexeme, i: number): readonly Slip[] {
  if (lexeme.kind !== 'header' || lexeme.inside !== null) return [];
  const { text } = source;
  const whole = withoutComment(text.slice(lexeme.start, lineEnd(text, lexeme.start)));
  const block = source.lexemes[i + 2];
  const hasLines = block?.kind === 'block' && block.text.trim() !== '';
  const isHeader = /^[>|][-+]?$/.test(whole) || (/^[>|][-+1-9]{1,2}$/.test(whole) && hasLines);
  return isHeader ? [] : [markSlip(lexeme.start, whole)];
}

/** Inside braces the same marks, and anywhere those that YAML keeps for itself. */
function reservedMark(source: Source, lexeme: Lexeme, i: number): readonly Slip[] {
  const marks = lexeme.inside === null ? /^[@`%]/ : /^[>|@`%]/;
  if (lexeme.kind !== 'plain' || !marks.test(lexeme.text)) return [];
  const next = after(source, i);
  if (next !== null && source.lexemes[next]!.kind === 'colon') return [];
  return [markSlip(lexeme.start, lexeme.text.split(/\r?\n/, 1)[0]!.trimEnd())];
}

/** `? somewhere`: a question mark before text. */
function questionMark(source: Source, lexeme: Lexeme, i: number): readonly Slip[] {
  const next = source.lexemes[i + 2];
  const isBefore = source.lexemes[i + 1]?.kind === 'space' && next?.kind === 'plain';
  if (lexeme.kind !== 'question' || !isBefore || !isValuePlace(source, i)) return [];
  return [markSlip(lexeme.start, source.text.slice(lexeme.start, next.end).split(/\r?\n/, 1)[0]!.trimEnd())];
}

/**
 * `note: &co`, `note: !see over there`: YAML takes the first word for a label. A label that something follows may be one
 * that is not repeated, or no longer.
 */
function swallowedWord(source: Source, lexeme: Lexeme, i: number, repeated: ReadonlySet<string>): readonly Slip[] {
  const { kind, text, start, inside } = lexeme;
  const isWord = kind === 'anchor' && endsAfter(source, i) && !repeated.has(text.slice(1));
  const isTag = kind === 'tag' && !text.startsWith('!!');
  const line = source.text.slice(start, lineEnd(source.text, start));
  if (!(isWord || isTag) || /^\S+\s*[[{"']/.test(line) || !isBlankBelow(source, i)) return [];
  return [markSlip(start, inside === null ? withoutComment(line) : line.replace(/\s*[,}\]].*$/s, ''))];
}

/** Whether no value of the field stands on the lines below. */
function isBlankBelow(source: Source, i: number): boolean {
  const { text, lexemes } = source;
  const next = after(source, i);
  if (next === null || lexemes[i]!.inside !== null) return true;
  const { start, kind } = lexemes[next]!;
  const [own, below] = [indentAt(text, lexemes[i]!.start), indentAt(text, start)];
  return (
    lineStart(text, start) === lineStart(text, lexemes[i]!.start) || (kind === 'dash' ? below < own : below <= own)
  );
}

function markSlip(start: number, whole: string): Slip {
  const end = start + whole.length;
  return slip('mark-starts-value', { start, end: start + 1 }, { mark: whole.slice(0, 1), text: whole }, [
    { start, end, text: quoted(whole) },
  ]);
}

function spanOf({ start, end }: Lexeme) {
  return { start, end };
}
