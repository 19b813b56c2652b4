import { type Slip, type Source, slip } from './slip.ts';

/** Lines that are indented with tabs: all of them are one slip, noted at the first. */
export function tabSlips({ lexemes }: Source): readonly Slip[] {
  const indents = lexemes.filter((lexeme, i) => {
    const first = lexemes[i - 1]?.kind ?? 'newline';
    const next = lexemes[i + 1]?.kind ?? 'newline';
    const isIndent = lexeme.kind === 'space' && lexeme.inside === null && first === 'newline';
    return isIndent && lexeme.text.includes('\t') && next !== 'newline' && next !== 'comment';
  });
  const [first] = indents;
  if (first === undefined) return [];
  const edits = indents.map(({ start, end, text }) => ({ start, end, text: text.replaceAll('\t', '  ') }));
  return [slip('tab-indentation', first, { lines: indents.length }, edits)];
}
