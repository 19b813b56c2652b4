import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Pair,
  parseDocument,
  Scalar,
  type YAMLError,
  type YAMLMap,
} from 'yaml';
import { aliasLimit, depthLimit } from './limits.ts';
import { below, refuse, type Spot } from './report.ts';
import { syntaxProblem } from './syntax-problem.ts';
import type { Entry, Span, TreeNode } from './tree.ts';

/** All scalars stay text as typed: the format, not YAML, says what is a number. Duplicate keys are found here. */
export const yamlOptions = {
  version: '1.2',
  schema: 'failsafe',
  merge: false,
  uniqueKeys: false,
  resolveKnownTags: false,
  prettyErrors: false,
  strict: true,
} as const;

/** A text taken apart with these options. */
export type ParsedText = Document.Parsed;

interface Walk {
  /** Offset in the text that is read → offset in the owner's text. */
  readonly originalOf: (offset: number) => number;
  readonly anchors: Map<string, { readonly node: TreeNode; readonly size: number }>;
  /** Values added by aliases so far. */
  added: number;
  /** Values walked so far, those added by aliases among them. */
  size: number;
  /** Whether text without a colon stood between braces. */
  lone: boolean;
}

/**
 * Reads YAML into a tree; notes what is wrong with its syntax. The text may be the owner's with edits made: `originalOf`
 * then leads back, and every place is one of the owner's text. `lone`: text without a colon stands between braces.
 */
export function readYaml(
  text: string,
  spot: Spot,
  originalOf: (offset: number) => number = (offset) => offset,
  document: ParsedText = parseDocument(text, yamlOptions),
): { readonly tree: TreeNode; readonly lone: boolean } {
  const errors = [...document.errors].sort((a, b) => a.pos[0] - b.pos[0]);
  noteErrors(errors, text, originalOf, spot);
  for (const { pos } of document.warnings.filter((w) => w.code === 'TAG_RESOLVE_FAILED')) {
    const at = { start: originalOf(pos[0]), end: originalOf(pos[1]) };
    refuse(spot, at, 'yaml-tag', { text: text.slice(pos[0], pos[1]) });
  }
  const walk: Walk = { anchors: new Map(), added: 0, size: 0, lone: false, originalOf };
  const tree = convert(document.contents, { start: 0, end: 0 }, spot, walk, 0);
  return { tree, lone: walk.lone };
}

/** One problem a line, and one for all that follows a text that has come to its end: one slip often makes several errors. */
function noteErrors(errors: readonly YAMLError[], text: string, originalOf: Walk['originalOf'], spot: Spot): void {
  const lines = new Set<number>();
  for (const error of errors.filter((e, i) => i === 0 || !e.message.includes('in YAML stream'))) {
    const at = originalOf(error.pos[0]);
    const { line } = spot.report.source.placeOf(at);
    if (lines.has(line) || lines.size >= 20) continue;
    lines.add(line);
    syntaxProblem(error, text, at, spot);
  }
}

function convert(node: unknown, empty: Span, spot: Spot, walk: Walk, depth: number): TreeNode {
  walk.size++;
  if (node === null || node === undefined) return { is: 'blank', at: empty };
  if (isAlias(node)) return follow(node.source, spanOf(node, empty, walk), spot, walk);
  if (depth > depthLimit) {
    refuse(spot, spanOf(node, empty, walk), 'too-deep', { limit: depthLimit });
    return { is: 'blank', at: empty };
  }
  const before = walk.size;
  const read = convertHere(node, empty, spot, walk, depth);
  const anchor = (node as { anchor?: string }).anchor;
  if (anchor !== undefined) walk.anchors.set(anchor, { node: read, size: walk.size - before + 1 });
  return read;
}

function convertHere(node: unknown, empty: Span, spot: Spot, walk: Walk, depth: number): TreeNode {
  const at = spanOf(node, empty, walk);
  if (isScalar(node)) return convertScalar(node, at);
  if (isSeq(node)) {
    const items = node.items.map((item, i) => convert(item, at, below(spot, i + 1), walk, depth + 1));
    return { is: 'list', items, at };
  }
  if (!isMap(node)) return { is: 'blank', at };
  return { is: 'map', entries: convertEntries(node, at, spot, walk, depth), braces: node.flow === true, at };
}

function convertScalar(node: Scalar, at: Span): TreeNode {
  const text = String(node.value ?? '');
  const plain = node.type === undefined || node.type === Scalar.PLAIN;
  if (plain && (text === '' || text === '~' || text.toLowerCase() === 'null')) return { is: 'blank', at };
  return { is: 'text', text, quoted: !plain, at };
}

function convertEntries(map: YAMLMap, at: Span, spot: Spot, walk: Walk, depth: number): readonly Entry[] {
  const entries: Entry[] = [];
  const first = new Map<string, Span>();
  for (const pair of map.items as Pair<unknown, unknown>[]) {
    const keyAt = spanOf(pair.key, at, walk);
    const key = keyText(pair.key, keyAt, spot);
    const value = convert(pair.value, { start: keyAt.end, end: keyAt.end }, below(spot, key ?? ''), walk, depth + 1);
    if (map.flow === true && pair.value === null) walk.lone = true;
    if (key === null) continue;
    const earlier = first.get(key);
    if (earlier !== undefined) {
      const { line } = spot.report.source.placeOf(earlier.start);
      const isSection = spot.path === '' && isMap(pair.value);
      refuse(below(spot, key), keyAt, isSection ? 'section-twice' : 'key-twice', { key, firstLine: line });
      continue;
    }
    first.set(key, keyAt);
    entries.push({ key, keyAt, value });
  }
  return entries;
}

function keyText(key: unknown, at: Span, spot: Spot): string | null {
  const text = isScalar(key) ? String(key.value ?? '').trim() : '';
  if (text !== '') return text;
  return refuse(spot, at, 'key-not-text', {});
}

function follow(name: string, at: Span, spot: Spot, walk: Walk): TreeNode {
  const target = walk.anchors.get(name);
  if (target === undefined) {
    refuse(spot, at, 'alias-unknown', { name });
    return { is: 'blank', at };
  }
  walk.size += target.size;
  walk.added += target.size;
  if (walk.added <= aliasLimit) return target.node;
  if (walk.added - target.size <= aliasLimit) refuse(spot, at, 'alias-expansion', { limit: aliasLimit });
  return { is: 'blank', at };
}

function spanOf(node: unknown, empty: Span, { originalOf }: Walk): Span {
  const range = (node as { range?: readonly [number, number, number] | null } | null)?.range;
  return range == null ? empty : { start: originalOf(range[0]), end: originalOf(range[1]) };
}
