import type { Lexeme } from './lexemes.ts';
import { beforeOnLine, lineEnd, quoted, type Slip, type Source, slip, slipsAt, withoutComment } from './slip.ts';

/** Quotes that are not closed on their line, and so swallow the fields below; and text behind a quote that closes too early. */
export function quoteSlips(source: Source): readonly Slip[] {
  return slipsAt(source, (lexeme, i) => {
    if (lexeme.kind !== 'quoted' || follows(source, i)) return [];
    if (isNotClosed(lexeme)) return [closedOnLine(source, lexeme)];
    return goesOn(source, i) ? [wholeValue(source, lexeme)] : [];
  });
}

/** Whether it stands behind other text of the same value. */
function follows(source: Source, i: number): boolean {
  const previous = beforeOnLine(source, i);
  return previous !== null && ['plain', 'quoted'].includes(source.lexemes[previous]!.kind);
}

/** A quoted text that never ends, or one of several lines of which a lower one starts as a field does. */
function isNotClosed({ text }: Lexeme): boolean {
  const ends = text.length > 1 && text.endsWith(text.slice(0, 1));
  return !ends || /\n[ \t]*(?:- )?[\p{L}\p{N}_-]+:(?:\s|$)/u.test(text);
}

function closedOnLine(source: Source, lexeme: Lexeme): Slip {
  const end = lexeme.start + valueOnLine(source, lexeme).length;
  const mark = lexeme.text.slice(0, 1);
  return slip('quote-not-closed', { start: lexeme.start, end: lexeme.start + 1 }, { mark }, [
    { start: end, end, text: mark },
  ]);
}

/** Whether more text stands behind the closing quote. */
function goesOn({ lexemes }: Source, i: number): boolean {
  const next = lexemes[i + 1]?.kind === 'space' ? i + 2 : i + 1;
  const kind = lexemes[next]?.kind;
  return kind === 'plain' || kind === 'quoted';
}

/** `"the 12" pipe"`: all of it is the value, without the quotes round it. */
function wholeValue(source: Source, { start, end, inside }: Lexeme): Slip {
  const whole = valueOnLine(source, { start, inside });
  const mark = whole.slice(0, 1);
  const value = whole.endsWith(mark) ? whole.slice(1, -1) : whole;
  const rest = source.text.slice(end, start + whole.length).trim();
  return slip('text-after-quote', { start: end, end: start + whole.length }, { rest }, [
    { start, end: start + whole.length, text: quoted(value) },
  ]);
}

/** The rest of the line; inside brackets up to the next field or the last closing bracket. */
function valueOnLine({ text }: Source, { start, inside }: Pick<Lexeme, 'start' | 'inside'>): string {
  const line = text.slice(start, lineEnd(text, start));
  if (inside === null) return withoutComment(line);
  return line.replace(/\s*,\s*[\p{L}\p{N}_-]+:\s.*$|\s*[\]}][\]}\s,]*(?:#.*)?$/su, '');
}
