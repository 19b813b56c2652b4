import type { Lexeme } from './lexemes.ts';
import { before, type Slip, type Source, slip } from './slip.ts';

const closing: Readonly<Record<string, string>> = { '{': '}', '[': ']' };

/** Lists and groups that are not closed before the next field, or closed with the other bracket. */
export function bracketSlips(source: Source): readonly Slip[] {
  const open: Lexeme[] = [];
  return source.lexemes.flatMap((lexeme, i) => {
    if (lexeme.kind === 'open') open.push(lexeme);
    if (lexeme.kind === 'given up') return giveUp(source, open.splice(0), i);
    if (lexeme.kind !== 'close') return [];
    const opened = open.pop();
    if (opened === undefined || closing[opened.text] === lexeme.text) return [];
    return [otherBracket(open, opened, lexeme)];
  });
}

/** All that is open is closed at the end of what was typed last. */
function giveUp(source: Source, open: readonly Lexeme[], i: number): readonly Slip[] {
  const last = before(source, i);
  const [outer] = open;
  if (outer === undefined || last === null) return [];
  const { end } = source.lexemes[last]!;
  const text = [...open]
    .reverse()
    .map((bracket) => closing[bracket.text]!)
    .join('');
  const innermost = open[open.length - 1]!;
  return [
    slip('bracket-not-closed', innermost, { mark: innermost.text, close: closing[innermost.text]! }, [
      { start: end, end, text },
    ]),
  ];
}

/** `[a, b}`: the closing bracket belongs to what lies outside, if that is of its kind; else it is the wrong one. */
function otherBracket(open: Lexeme[], opened: Lexeme, close: Lexeme): Slip {
  const mark = closing[opened.text]!;
  const outer = open[open.length - 1];
  const values = { mark: opened.text, close: mark };
  if (outer !== undefined && closing[outer.text] === close.text) {
    open.pop();
    return slip('bracket-not-closed', opened, values, [{ start: close.start, end: close.start, text: mark }]);
  }
  return slip('bracket-not-closed', opened, values, [{ start: close.start, end: close.end, text: mark }]);
}
