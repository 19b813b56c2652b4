import { fieldNames } from './field-names.ts';
import type { Lexeme } from './lexemes.ts';
import { after, before, beforeOnLine, type Slip, type Source, slip } from './slip.ts';

/** Names without a colon and a space behind them: to YAML `length:8 ft` and `length 8 ft` are no fields, only text. */
export function spaceSlips(source: Source): readonly Slip[] {
  return source.lexemes.flatMap((lexeme, i) => {
    if (lexeme.kind !== 'plain' || !isNamePlace(source, lexeme, i)) return [];
    return [...withoutSpace(lexeme), ...withoutColon(source, lexeme, i)];
  });
}

const nameAndMore = /^(\p{L}[\p{L}\p{M}\p{N}_-]*):(?=[^\s:])(.)/u;

/** `length:8 ft`: a field's or section's name, or any name before a bracket or quote, where a name is due. */
function withoutSpace(lexeme: Lexeme): readonly Slip[] {
  const slips: Slip[] = [];
  let at = lexeme.start;
  for (const line of lexeme.text.split('\n')) {
    const indent = line.length - line.trimStart().length;
    const [, name = '', next = ''] = nameAndMore.exec(line.trimStart()) ?? [];
    const isName = fieldNames.has(name) || '{["\''.includes(next) || lexeme.inside === '{';
    const end = at + indent + name.length + 1;
    if (name !== '' && isName) {
      slips.push(slip('colon-without-space', { start: end - 1, end }, { name }, [{ start: end, end, text: ' ' }]));
    }
    at += line.length + 1;
  }
  return slips;
}

/**
 * `length 8 ft`, or `electrodes` and its parts on the lines below: a field's or section's name, or a name alone on its
 * line. Between braces only behind the opening one: elsewhere it may as well be text that a comma cut off.
 */
function withoutColon(source: Source, lexeme: Lexeme, i: number): readonly Slip[] {
  if (lexeme.inside === '{' && kindAt(source, before(source, i)) !== 'open') return [];
  const lines = lexeme.text.split('\n');
  const hasColon = kindAt(source, after(source, i)) === 'colon';
  const slips: Slip[] = [];
  let at = lexeme.start;
  for (const line of hasColon ? lines.slice(0, -1) : lines) {
    const indent = line.length - line.trimStart().length;
    const [, name = '', rest = ''] = /^([\p{L}][\p{L}\p{M}\p{N}_-]*)(?:\s+(.*))?$/su.exec(line.trim()) ?? [];
    const isName = fieldNames.has(name) ? lexeme.inside === null || rest !== '' : rest === '' && lines.length > 1;
    const end = at + indent + name.length;
    if (name !== '' && isName) {
      slips.push(slip('colon-missing', { start: end, end }, { name }, [{ start: end, end, text: ':' }]));
    }
    at += line.length + 1;
  }
  return slips;
}

function kindAt({ lexemes }: Source, i: number | null): Lexeme['kind'] | null {
  return i === null ? null : lexemes[i]!.kind;
}

/** First on its line, or between braces with no colon of its own. */
function isNamePlace(source: Source, { inside }: Lexeme, i: number): boolean {
  if (inside === null) {
    const previous = beforeOnLine(source, i);
    return previous === null || source.lexemes[previous]!.kind === 'dash';
  }
  const [previous, next] = [before(source, i), after(source, i)].map((j) =>
    j === null ? null : source.lexemes[j]!.kind,
  );
  return inside === '{' && (previous === 'comma' || previous === 'open') && next !== 'colon';
}
