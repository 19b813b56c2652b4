/** A site file's text as a tree of our own: maps, lists, text and blanks, each with its place in the source. */

/** Offsets into the source text; `end` is the first that no longer belongs. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export interface Entry {
  readonly key: string;
  readonly keyAt: Span;
  readonly value: TreeNode;
}

export interface TextNode {
  readonly is: 'text';
  readonly text: string;
  readonly quoted: boolean;
  readonly at: Span;
}

export interface ListNode {
  readonly is: 'list';
  readonly items: readonly TreeNode[];
  readonly at: Span;
}

export interface MapNode {
  readonly is: 'map';
  readonly entries: readonly Entry[];
  /** Written with braces. */
  readonly braces: boolean;
  readonly at: Span;
}

/** Nothing typed: `length:` with nothing behind it, `~` or `null`. */
export interface BlankNode {
  readonly is: 'blank';
  readonly at: Span;
}

export type TreeNode = TextNode | ListNode | MapNode | BlankNode;

/** The value of a map's key; null where the key is missing. */
export function childOf(map: MapNode, key: string): TreeNode | null {
  return map.entries.find((entry) => entry.key === key)?.value ?? null;
}

/** What a node is, for a sentence. */
export function sayNode(node: TreeNode): string {
  if (node.is === 'list') return 'a list';
  if (node.is === 'map') return 'a group of fields';
  return node.is === 'blank' ? 'nothing' : 'text';
}

/** Path of the innermost field that an offset lies in; '' where it lies in none. */
export function pathAt(node: TreeNode, offset: number): string {
  const found = childAt(node, offset);
  if (found === null) return '';
  const below = pathAt(found.child, offset);
  return below === '' ? found.name : `${found.name}.${below}`;
}

function childAt(node: TreeNode, offset: number): { readonly name: string; readonly child: TreeNode } | null {
  const holds = (start: number, end: number) => offset >= start && offset <= end;
  if (node.is === 'list') {
    const i = node.items.findIndex(({ at }) => holds(at.start, at.end));
    return i < 0 ? null : { name: String(i + 1), child: node.items[i]! };
  }
  if (node.is !== 'map') return null;
  const entry = node.entries.find(({ keyAt, value }) => holds(keyAt.start, Math.max(keyAt.end, value.at.end)));
  return entry === undefined ? null : { name: entry.key, child: entry.value };
}
