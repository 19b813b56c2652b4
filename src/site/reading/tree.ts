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
