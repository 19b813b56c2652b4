import { unwrapped } from '../format/read-value.ts';
import type { Entry, TreeNode } from './tree.ts';

const mostCharacters = 400;

/** The text of every field as typed, on one line; `text` is the whole file. A field with nothing behind it is unknown. */
export function typedTexts(entries: readonly Entry[], text: string): Readonly<Record<string, string>> {
  return Object.fromEntries(entries.map(({ key, value }) => [key, oneLine(unwrapped(value), text)]));
}

function oneLine(node: TreeNode, text: string): string {
  if (node.is === 'text') return node.text.trim();
  if (node.is === 'blank') return 'unknown';
  return text.slice(node.at.start, node.at.end).replace(/\s+/g, ' ').trim().slice(0, mostCharacters);
}
