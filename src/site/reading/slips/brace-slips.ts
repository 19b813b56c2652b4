import { fieldNames } from './field-names.ts';
import type { Lexeme } from './lexemes.ts';
import { beforeOnLine, type Edit, lineEnd, type Slip, type Source, slip, slipsAt, withoutComment } from './slip.ts';

/** Fields on the line of their part, without the braces: `c1: from: panel`, `rod: kind: rod, length: 8 ft}`. */
export function braceSlips(source: Source): readonly Slip[] {
  return slipsAt(source, (lexeme, i) => {
    const next = source.lexemes[i + 1]?.kind;
    const previous = beforeOnLine(source, i);
    const isName = lexeme.kind === 'plain' && next === 'colon' && fieldNames.has(lexeme.text);
    const isValue = previous !== null && source.lexemes[previous]!.kind === 'colon';
    return isName && isValue && lexeme.inside === null ? [bracesMissing(source, lexeme)] : [];
  });
}

function bracesMissing({ text }: Source, { start }: Lexeme): Slip {
  const fields = withoutComment(text.slice(start, lineEnd(text, start)));
  const end = start + fields.length;
  const edits: Edit[] = [{ start, end: start, text: '{' }];
  if (!fields.endsWith('}') || fields.includes('{')) edits.push({ start: end, end, text: '}' });
  return slip('braces-missing', { start, end }, {}, edits);
}
