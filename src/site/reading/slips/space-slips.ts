import { fieldNames } from './field-names.ts';
import type { Lexeme } from './lexemes.ts';
import { after, before, beforeOnLine, type Slip, type Source, slip, slipsAt } from './slip.ts';

/** Names without a colon and a space behind them: to YAML `length:8 ft` and `length 8 ft` are no fields, only text. */
export function spaceSlips(source: Source): readonly Slip[] {
  return slipsAt(source, (lexeme, i) => {
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
  const startsGroup = hasColon && /[{[]/.test(lines[lines.length - 1]!);
  for (const line of hasColon && !startsGroup ? lines.slice(0, -1) : lines) {
    const indent = line.length - line.trimStart().length;
    const { name, isName, mark } = nameOf(line.trim(), lexeme.inside, lines.length > 1);
    const end = at + indent + name.length;
    if (isName) {
      const edit = { start: end, end: end + mark.length, text: mark === '' ? ':' : ': ' };
      slips.push(slip('colon-missing', { start: end, end }, { name }, [edit]));
    }
    at += line.length + 1;
  }
  return slips;
}

/** The name that a line starts with, whether a colon is missing behind it, and what stands in its place: ` = `, or space before a bracket. */
function nameOf(line: string, inside: Lexeme['inside'], isAbove: boolean) {
  const [, name = '', space = '', rest = ''] = /^(\p{L}[\p{L}\p{M}\p{N}_-]*)(\s*=\s*|\s*)(.*)$/su.exec(line) ?? [];
  const isGroup = /^[{[]/.test(rest);
  const isField = fieldNames.has(name) && space !== '';
  const isAlone = rest === '' && (fieldNames.has(name) ? inside === null : isAbove);
  const mark = isGroup || space.includes('=') ? space : '';
  return { name, isName: name !== '' && (isField || isGroup || isAlone), mark };
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
