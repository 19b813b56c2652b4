import { nearName } from '../../units/near-name.ts';
import { below, isFull, refuse, type Spot } from '../reading/report.ts';
import { childOf, type MapNode, type TreeNode } from '../reading/tree.ts';
import type { HowKnown } from '../site.ts';
import type { FieldType } from './field.ts';

export const howKnownWords = ['seen', 'told', 'measured', 'assumed', 'planned'] as const;

/** Reads a value: blank and `unknown` are null, `{is, known}` is taken off. */
export function readValue<T>(type: FieldType<T>, node: TreeNode, spot: Spot): T | null {
  const inner = unwrapped(node);
  if (isUnknown(inner)) return null;
  return type.read(inner, spot);
}

/** Blank, or the word `unknown`. */
export function isUnknown(node: TreeNode): boolean {
  return node.is === 'blank' || (node.is === 'text' && node.text.trim().toLowerCase() === 'unknown');
}

/** The value inside `{is: ..., known: ...}`, or the node itself. */
export function unwrapped(node: TreeNode): TreeNode {
  if (node.is !== 'map') return node;
  return childOf(node, 'is') ?? node;
}

/** How a wrapped field is known; null where it is not wrapped or does not say. Other keys of the wrapper are refused. */
export function howKnown(node: TreeNode, spot: Spot): HowKnown | null {
  if (node.is !== 'map' || childOf(node, 'is') === null) return null;
  refuseOtherKeys(node, ['is', 'known', 'note'], spot);
  const known = childOf(node, 'known');
  return known === null || isUnknown(known) ? null : readHowKnown(known, below(spot, 'known'));
}

export function readHowKnown(node: TreeNode, spot: Spot): HowKnown | null {
  const word = node.is === 'text' ? node.text.trim() : '';
  const found = howKnownWords.find((w) => w === word);
  if (found !== undefined) return found;
  const values = { text: word, words: howKnownWords.join(', ') };
  return refuse(spot, node.at, 'word-unknown', values, nearName(word, howKnownWords));
}

/** Notes every key that is not in the list, with the nearest that is. */
export function refuseOtherKeys(map: MapNode, keys: readonly string[], spot: Spot): void {
  for (const { key, keyAt } of map.entries) {
    if (keys.includes(key) || isFull(spot)) continue;
    const values = { key, keys: keys.join(', ') };
    refuse(below(spot, key), keyAt, 'key-unknown', values, nearName(key, keys));
  }
}
