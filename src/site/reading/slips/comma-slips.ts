import { fieldNames, listNames } from './field-names.ts';
import type { Lexeme } from './lexemes.ts';
import { after, before, quoted, type Slip, type Source, slip, slipsAt } from './slip.ts';

/**
 * Inside braces a comma ends a value: `{length: 2,5 m}` is a length of 2 and a field `5 m`, `{note: loose, seen in May}`
 * has a field `seen in May`. Shown by text between commas that has no colon. A field's own name there has lost its value.
 */
export function commaSlips(source: Source): readonly Slip[] {
  return slipsAt(source, (lexeme, i) => (isLone(source, lexeme, i) ? loneSlip(source, lexeme, i) : []));
}

/** Text between two commas or braces, without a colon behind it. */
function isLone(source: Source, { kind, inside }: Lexeme, i: number): boolean {
  if (kind !== 'plain' || inside !== '{') return false;
  const previous = kindAt(source, before(source, i));
  const next = kindAt(source, after(source, i));
  return (previous === 'comma' || previous === 'open') && (next === 'comma' || next === 'close');
}

function kindAt({ lexemes }: Source, i: number | null): Lexeme['kind'] | null {
  return i === null ? null : lexemes[i]!.kind;
}

function loneSlip(source: Source, lone: Lexeme, i: number): readonly Slip[] {
  const spaceless = /^[^\s:]+:(?=\S)/.exec(lone.text);
  if (spaceless !== null) return [];
  if (fieldNames.has(lone.text.trim())) {
    const edit = { start: lone.end, end: lone.end, text: ': unknown' };
    return [slip('field-without-value', lone, { field: lone.text }, [edit])];
  }
  const comma = before(source, i);
  const value = comma === null ? null : before(source, comma);
  if (value === null || !isValue(source, value)) return [];
  return [commaSlip(source, value, source.lexemes[comma!]!, i)];
}

/** Text without quotes that stands behind a colon. */
function isValue(source: Source, i: number): boolean {
  return source.lexemes[i]!.kind === 'plain' && kindAt(source, before(source, i)) === 'colon';
}

function commaSlip(source: Source, valueAt: number, comma: Lexeme, i: number): Slip {
  const { text } = source;
  const value = source.lexemes[valueAt]!;
  const rest = source.lexemes[i]!;
  const touching = comma.end === rest.start;
  if (touching && /^\d{1,3}$/.test(value.text) && /^\d{3}(?!\d)/.test(rest.text)) {
    return slip('thousands-in-braces', comma, {}, [{ start: comma.start, end: comma.end, text: '' }]);
  }
  if (touching && /\d$/.test(value.text) && /^\d/.test(rest.text)) {
    return slip('decimal-comma-in-braces', comma, {}, [{ start: comma.start, end: comma.end, text: '.' }]);
  }
  const last = lastLone(source, i);
  const whole = text.slice(value.start, last.end);
  const values = { kept: value.text, rest: text.slice(rest.start, last.end) };
  const span = { start: value.start, end: last.end };
  if (listNames.has(fieldOf(source, valueAt)))
    return slip('list-in-braces', comma, values, [{ ...span, text: `[${whole}]` }]);
  return slip('comma-in-braces', comma, values, [{ ...span, text: quoted(whole) }]);
}

/** The name before the colon that a value stands behind. */
function fieldOf(source: Source, value: number): string {
  const colon = before(source, value);
  const name = colon === null ? null : before(source, colon);
  return name === null ? '' : source.lexemes[name]!.text.trim();
}

/** The last of the pieces that one text with several commas was cut into. */
function lastLone(source: Source, i: number): Lexeme {
  let last = i;
  for (;;) {
    const comma = after(source, last);
    const next = kindAt(source, comma) === 'comma' ? after(source, comma!) : null;
    if (next === null || !isLone(source, source.lexemes[next]!, next)) return source.lexemes[last]!;
    if (fieldNames.has(source.lexemes[next]!.text)) return source.lexemes[last]!;
    last = next;
  }
}
