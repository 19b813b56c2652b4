import type { Lexeme } from './lexemes.ts';
import { before, beforeOnLine, type Slip, type Source, slip } from './slip.ts';

const closing: Readonly<Record<string, string>> = { '{': '}', '[': ']' };

/** Lists and groups that are not closed before the next field, or closed with the other bracket. */
export function bracketSlips(source: Source): readonly Slip[] {
  const open: Lexeme[] = [];
  const slips = source.lexemes.flatMap((lexeme, i) => {
    if (lexeme.kind === 'open') open.push(lexeme);
    if (lexeme.kind === 'given up') return giveUp(source, open.splice(0), i);
    if (lexeme.kind === 'plain') return tooMany(source, lexeme, i);
    if (lexeme.kind !== 'close') return [];
    const opened = open.pop();
    if (opened === undefined) return [markTooMany(lexeme)];
    if (closing[opened.text] === lexeme.text) return [];
    return [otherBracket(open, opened, lexeme)];
  });
  return [...slips, ...giveUp(source, open, source.lexemes.length)];
}

/** `}}` or `},` behind what is closed already. */
function tooMany(source: Source, lexeme: Lexeme, i: number): readonly Slip[] {
  const { kind, text, inside } = lexeme;
  const previous = beforeOnLine(source, i);
  const isClosed = previous !== null && source.lexemes[previous]!.kind === 'close';
  if (kind !== 'plain' || inside !== null || !isClosed || !/^[}\],;]+$/.test(text)) return [];
  return [markTooMany(lexeme)];
}

function markTooMany({ start, end, text }: Lexeme): Slip {
  return slip('mark-too-many', { start, end }, { mark: text }, [{ start, end, text: '' }]);
}

/** A comment that holds the brackets that are missing. */
function swallowed(source: Source, last: number): Slip | null {
  const next = source.lexemes[last + 1]?.kind === 'space' ? last + 2 : last + 1;
  const comment = source.lexemes[next];
  if (comment?.kind !== 'comment' || !/[}\]]/.test(comment.text)) return null;
  const lost = comment.text.replace(/\s*[,}\]].*$/s, '');
  const start = source.lexemes[last]!.end;
  const edit = { start, end: comment.start + lost.length, text: '' };
  return slip('bracket-in-comment', comment, { lost: comment.text }, [edit]);
}

/** All that is open is closed at the end of what was typed last. */
function giveUp(source: Source, open: readonly Lexeme[], i: number): readonly Slip[] {
  const last = before(source, i);
  const [outer] = open;
  if (outer === undefined || last === null) return [];
  const inComment = swallowed(source, last);
  if (inComment !== null) return [inComment];
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
