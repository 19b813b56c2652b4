import { fieldNames } from './field-names.ts';
import type { Lexeme } from './lexemes.ts';
import {
  before,
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

/**
 * Colons that YAML takes in another way than meant: one too many in a value (`note: seen: loose`), one that follows a field
 * with no comma between, and a field that is indented so far that it goes on with the value above it.
 */
export function colonSlips(source: Source): readonly Slip[] {
  return slipsAt(source, (lexeme, i) => (lexeme.kind === 'colon' ? secondColon(source, lexeme, i) : []));
}

/** A colon behind a value that stands behind a colon. */
function secondColon(source: Source, colon: Lexeme, i: number): readonly Slip[] {
  const name = before(source, i);
  const first = name === null ? null : before(source, name);
  if (first === null || source.lexemes[first]!.kind !== 'colon') return [];
  if (source.lexemes[name!]!.kind !== 'plain' && source.lexemes[name!]!.kind !== 'quoted') return [];
  const value = source.lexemes[name!]!;
  const isNext = lineStart(source.text, value.start) !== lineStart(source.text, source.lexemes[first]!.start);
  if (isNext && colon.inside === null) return [];
  const [, start, field] = /^(.*\S)\s+(\S+)$/s.exec(value.text) ?? [];
  const isField = field !== undefined && fieldNames.has(field);
  if (colon.inside === null && value.text.includes('\n')) return isField ? [tooFarIn(source, value, first)] : [];
  if (isField && start !== undefined && colon.inside === '{') {
    const end = value.start + start.length;
    return [slip('comma-missing', { start: end, end }, { field }, [{ start: end, end, text: ',' }])];
  }
  if (fieldNames.has(value.text)) return [];
  return colonInValue(source, value, colon);
}

function tooFarIn({ text, lexemes }: Source, value: Lexeme, first: number): Slip {
  const start = lineStart(text, value.end);
  const end = start + /^\s*/.exec(text.slice(start))![0].length;
  const indent = ' '.repeat(indentAt(text, lexemes[first]!.start));
  return slip('line-too-far-in', { start: end, end: value.end }, {}, [{ start, end, text: indent }]);
}

function colonInValue(source: Source, value: Lexeme, colon: Lexeme): readonly Slip[] {
  const { text } = source;
  if (colon.inside === '[') return [];
  const line = text.slice(value.start, lineEnd(text, value.start));
  const whole = colon.inside === null ? withoutComment(line) : line.replace(/\s*[,}].*$/s, '');
  const edit = { start: value.start, end: value.start + whole.length, text: quoted(whole) };
  return [slip('colon-in-value', colon, { text: whole }, [edit])];
}
