import { pieceCount } from '../build/line.ts';
import { below, refuse } from '../reading/report.ts';
import { childOf, type MapNode } from '../reading/tree.ts';
import type { Checked } from './checked.ts';

/** Refuses a list of lengths that has not one for each piece: nobody could tell which is which. */
export function countLengths({ typed }: Checked): void {
  for (const { values, node, spot, fieldAt } of typed.parts.lines) {
    const { path, lengths, along } = values;
    const isWhole = path !== null && along === null && itemsOf(node, 'path') === path.length;
    if (!isWhole || lengths === null || lengths.length === 0) continue;
    const pieces = pieceCount(path);
    if (lengths.length === pieces) continue;
    refuse(below(spot, 'lengths'), fieldAt.get('lengths')!, 'lengths-count', { count: lengths.length, pieces });
  }
  for (const { values, spot, fieldAt } of typed.parts.conductors) {
    const { passes, lengths } = values;
    const pieces = (passes?.length ?? 0) + 1;
    if (lengths === null || lengths.length === 0 || lengths.length === pieces) continue;
    refuse(below(spot, 'lengths'), fieldAt.get('lengths')!, 'lengths-count', { count: lengths.length, pieces });
  }
}

/** Items that were typed, those that could not be read among them. */
function itemsOf(node: MapNode | null, key: string): number {
  const list = node === null ? null : childOf(node, key);
  return list?.is === 'list' ? list.items.length : -1;
}
