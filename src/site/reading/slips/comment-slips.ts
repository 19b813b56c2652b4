import { readWire } from '../../../materials/wire.ts';
import type { Lexeme } from './lexemes.ts';
import {
  after,
  before,
  beforeOnLine,
  indentAt,
  quoted,
  type Slip,
  type Source,
  slip,
  slipsAt,
  withoutComment,
} from './slip.ts';

/**
 * Values that a comment swallowed. `#` after a space starts a comment; in the trade it also stands before a gauge or a
 * number, and `wire: #6 copper` would be a field left blank. What is taken for what:
 *
 * - The comment is all that stands behind `key:`, and no value follows below: lost, where the `#` touches a letter or
 *   digit (`#6 copper`, `#tower`) or a figure follows it (`# 6 AWG`). With a space and a word (`wire:  # nobody looked`)
 *   it is a comment and the field is blank.
 * - A value without quotes stands before it: cut short, where one space and `#` with a digit follow (`name: tower #2`,
 *   `wire: 2 #6 copper`). Two spaces, or a space or a letter after the `#` (`8 ft  #2 of them`, `8 ft # told by owner`,
 *   `8 ft #told`): a comment, for that is how comments are written and numbers are not.
 *   A small number before a wire (`2 #6 copper`) is how many wires there are.
 * - It stands where the next item of a list would (`[R1, #2`): lost, where `#` touches a digit after at most one space.
 * - It stands on a line of its own below a `key:` that is otherwise blank: lost, where `#` touches a digit.
 * - After a quote or a closing bracket nothing can be cut: always a comment; so is any other on a line of its own.
 */
export function commentSlips(source: Source): readonly Slip[] {
  return slipsAt(source, (lexeme, i) => (lexeme.kind === 'comment' ? commentSlip(source, lexeme, i) : []));
}

const numbered = /^#\d/;
const looksLikeValue = /^#(?:[\p{L}\p{N}]|\s?\d)/u;

function commentSlip(source: Source, comment: Lexeme, i: number): readonly Slip[] {
  const previous = beforeOnLine(source, i);
  if (previous === null) return onOwnLine(source, comment, i);
  const last = source.lexemes[previous]!;
  const spaces = comment.start - last.end;
  const lost = lostPart(comment);
  const end = comment.start + lost.length;
  if (last.kind === 'colon' && looksLikeValue.test(comment.text) && isBlank(source, i)) {
    return [slip('value-in-comment', comment, { lost }, [{ start: comment.start, end, text: quoted(lost) }])];
  }
  if (spaces > 1 || !numbered.test(comment.text)) return [];
  if (last.kind === 'plain') {
    if (isWire(source, previous) && /^\d{1,2}$/.test(last.text) && readWire(lost).ok)
      return [severalWires(last, lost, end)];
    const whole = source.text.slice(last.start, end);
    const values = { kept: last.text, lost };
    return [slip('value-cut-by-comment', comment, values, [{ start: last.start, end, text: quoted(whole) }])];
  }
  if (!['comma', 'open', 'dash'].includes(last.kind)) return [];
  return [slip('value-in-comment', comment, { lost }, [{ start: comment.start, end, text: quoted(lost) }])];
}

/** Below `wire:` as its value would be. */
function onOwnLine(source: Source, comment: Lexeme, i: number): readonly Slip[] {
  const colon = before(source, i);
  const isValue = colon !== null && source.lexemes[colon]!.kind === 'colon' && comment.inside === null;
  if (!isValue || !numbered.test(comment.text) || !isBlank(source, i)) return [];
  if (indentAt(source.text, comment.start) <= indentAt(source.text, source.lexemes[colon]!.start)) return [];
  const lost = lostPart(comment);
  const end = comment.start + lost.length;
  return [slip('value-in-comment', comment, { lost }, [{ start: comment.start, end, text: quoted(lost) }])];
}

/** Whether it is the value of a field that is a wire. */
function isWire(source: Source, i: number): boolean {
  const colon = before(source, i);
  const name = colon === null ? null : before(source, colon);
  return name !== null && /wire$/.test(source.lexemes[name]!.text);
}

/** `2 #6 copper`: the trade's way to say two wires alike. */
function severalWires(count: Lexeme, wire: string, end: number): Slip {
  const edit = { start: count.start, end, text: quoted(wire) };
  return slip('wires-cut-by-comment', { start: count.end + 1, end }, { count: count.text, wire: quoted(wire) }, [edit]);
}

/** What of the comment would have been the value: inside brackets up to the next comma or closing bracket. */
function lostPart({ text, inside }: Lexeme): string {
  const value = withoutComment(text);
  return inside === null ? value : value.replace(/\s*[,\]}].*$/s, '');
}

/** Whether nothing below or behind the comment is the value of the key before it. */
function isBlank(source: Source, i: number): boolean {
  const comment = source.lexemes[i]!;
  const next = after(source, i);
  if (next === null) return true;
  const { kind, start } = source.lexemes[next]!;
  if (comment.inside !== null) return /[,\]}]/.test(comment.text) || ['comma', 'close', 'given up'].includes(kind);
  const colon = before(source, i);
  const own = indentAt(source.text, colon === null ? comment.start : source.lexemes[colon]!.start);
  const below = indentAt(source.text, start);
  return kind === 'dash' ? below < own : below <= own;
}
