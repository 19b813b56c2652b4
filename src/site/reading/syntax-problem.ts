import type { YAMLError } from 'yaml';
import { refuse, type Spot } from './report.ts';

const keys: Readonly<Record<string, string>> = {
  ALIAS_PROPS: 'yaml-reserved',
  BAD_ALIAS: 'yaml-reserved',
  BAD_COLLECTION_TYPE: 'yaml-tag',
  BAD_DIRECTIVE: 'yaml-reserved',
  BAD_DQ_ESCAPE: 'yaml-escape',
  BAD_INDENT: 'yaml-indent',
  BAD_PROP_ORDER: 'yaml-reserved',
  BAD_SCALAR_START: 'yaml-reserved',
  BLOCK_AS_IMPLICIT_KEY: 'yaml-unreadable',
  BLOCK_IN_FLOW: 'yaml-reserved',
  IMPOSSIBLE: 'yaml-unreadable',
  KEY_OVER_1024_CHARS: 'yaml-key-long',
  MISSING_CHAR: 'yaml-missing',
  MULTILINE_IMPLICIT_KEY: 'yaml-missing',
  MULTIPLE_ANCHORS: 'yaml-reserved',
  MULTIPLE_DOCS: 'yaml-two-documents',
  MULTIPLE_TAGS: 'yaml-tag',
  NON_STRING_KEY: 'key-not-text',
  TAB_AS_INDENT: 'yaml-indent',
  TAG_RESOLVE_FAILED: 'yaml-tag',
  UNEXPECTED_TOKEN: 'yaml-unreadable',
};

/** How far back a line is looked at for what stands before the error. */
const indentLooked = 500;

/** Notes an error of the YAML reader in words of our own, with the text at which it stopped; `at` is its place in the owner's text. */
export function syntaxProblem(error: YAMLError, text: string, at: number, spot: Spot): void {
  const [start] = error.pos;
  const rest = text.slice(start).split(/\r?\n/, 1)[0] ?? '';
  const startsLine = /(?:^|\n)[ \t]*$/.test(text.slice(Math.max(0, start - indentLooked), start));
  const isIndent = error.code === 'UNEXPECTED_TOKEN' && startsLine && !/^\s*[}\],]/.test(rest);
  const fallback = isIndent ? 'yaml-indent' : keys[error.code];
  const key = start >= text.trimEnd().length && error.code !== 'MULTIPLE_DOCS' ? 'yaml-ends-early' : fallback;
  const indent = key === 'yaml-indent' ? /^\s*/.exec(rest)![0].length : 0;
  refuse(spot, { start: at + indent, end: at + indent }, key ?? 'yaml-unreadable', { text: rest.trim().slice(0, 60) });
}
