import type { Lexeme } from './lexemes.ts';
import {
  after,
  beforeOnLine,
  endsAfter,
  lineEnd,
  quoted,
  type Slip,
  type Source,
  slip,
  withoutComment,
} from './slip.ts';

/** Marks at the start of a value that mean something else to YAML: `> 1000 ohm`, `?`, `*`, `-`, `@`, `%`, `&`, `!`. */
export function markSlips(source: Source): readonly Slip[] {
  const repeated = new Set(source.lexemes.filter((l) => l.kind === 'alias').map((l) => l.text.slice(1)));
  return source.lexemes.flatMap((lexeme, i) => [
    ...unknownMark(source, lexeme, i),
    ...headerSlip(source, lexeme, i),
    ...reservedMark(source, lexeme, i),
    ...questionMark(source, lexeme, i),
    ...swallowedWord(source, lexeme, repeated),
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

/** `&co and sons`, `!see note`: YAML takes the first word for a label. A label that is repeated with `*` is one. */
function swallowedWord(
  source: Source,
  { kind, text, start, inside }: Lexeme,
  repeated: ReadonlySet<string>,
): readonly Slip[] {
  const isLabel = kind === 'anchor' && repeated.has(text.slice(1));
  const isWord = (kind === 'anchor' && !isLabel) || (kind === 'tag' && !text.startsWith('!!'));
  const line = source.text.slice(start, lineEnd(source.text, start));
  if (!isWord || /^\S+\s*[[{"']/.test(line)) return [];
  const whole = inside === null ? withoutComment(line) : line.replace(/\s*[,}\]].*$/s, '');
  return [markSlip(start, whole)];
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
