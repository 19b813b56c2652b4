import { CST, Lexer } from 'yaml';
import type { Span } from '../tree.ts';

export type LexemeKind =
  | 'plain'
  | 'quoted'
  | 'colon'
  | 'comma'
  | 'open'
  | 'close'
  | 'comment'
  | 'space'
  | 'newline'
  | 'dash'
  | 'question'
  | 'alias'
  | 'anchor'
  | 'tag'
  /** `>` or `|` before lines of text. */
  | 'header'
  /** The lines of text after a header. */
  | 'block'
  /** Where a list or group that was never closed is given up. */
  | 'given up'
  | 'other';

/** A piece of the text as YAML takes it apart. */
export interface Lexeme extends Span {
  readonly kind: LexemeKind;
  readonly text: string;
  /** The innermost bracket that it stands in; null: none. */
  readonly inside: '{' | '[' | null;
}

const kinds: Readonly<Record<string, LexemeKind>> = {
  'single-quoted-scalar': 'quoted',
  'double-quoted-scalar': 'quoted',
  'map-value-ind': 'colon',
  comma: 'comma',
  'flow-map-start': 'open',
  'flow-seq-start': 'open',
  'flow-map-end': 'close',
  'flow-seq-end': 'close',
  comment: 'comment',
  space: 'space',
  newline: 'newline',
  'seq-item-ind': 'dash',
  'explicit-key-ind': 'question',
  alias: 'alias',
  anchor: 'anchor',
  tag: 'tag',
  'block-scalar-header': 'header',
  'flow-error-end': 'given up',
};

/** Marks that the lexer puts between the pieces; they are not in the text. */
const scalarFollows = '\u001f';
const unseen: readonly string[] = ['\u0002', '\u0018', '\ufeff'];

/** The pieces of the text in order, those without any text left out. Together they are the text. */
export function lexemesOf(text: string): readonly Lexeme[] {
  const lexemes: Lexeme[] = [];
  const brackets: ('{' | '[')[] = [];
  let at = 0;
  let isScalar = false;
  for (const piece of new Lexer().lex(text)) {
    if (piece === scalarFollows) {
      isScalar = true;
      continue;
    }
    const kind = isScalar ? scalarKind(lexemes) : (kinds[CST.tokenType(piece) ?? ''] ?? 'other');
    isScalar = false;
    const length = unseen.includes(piece) && !text.startsWith(piece, at) ? 0 : piece.length;
    if (kind === 'given up') brackets.length = 0;
    if (kind === 'close') brackets.pop();
    const inside = brackets[brackets.length - 1] ?? null;
    if (length > 0 || kind === 'given up') lexemes.push({ kind, text: piece, inside, start: at, end: at + length });
    if (kind === 'open') brackets.push(piece === '{' ? '{' : '[');
    at += length;
  }
  return lexemes;
}

/** What follows a header and the end of its line is the text that it announces. */
function scalarKind(before: readonly Lexeme[]): 'plain' | 'block' {
  for (let i = before.length - 1; i >= 0; i--) {
    const { kind } = before[i]!;
    if (kind === 'header') return 'block';
    if (kind !== 'newline' && kind !== 'space' && kind !== 'comment' && kind !== 'other') return 'plain';
  }
  return 'plain';
}
