import type { Study } from '../study/study.ts';

type Tie = Study['bonding']['ties'][number];

export interface TreeRow {
  readonly id: string;
  readonly parent: string | null;
  readonly depth: number;
  /** The tie to the parent. */
  readonly tie: Tie | null;
}

/**
 * The parts of a group as a tree of its bonds, in reading order: breadth first from the root, so that every part hangs as
 * near to the root as its bonds allow; what no bond of the list reaches (a bond nobody described) stands at the root's
 * level. Parts of one parent are in the order of `ids`.
 */
export function bondTree(ids: readonly string[], root: string, bonds: readonly Tie[]): readonly TreeRow[] {
  const rows = new Map<string, TreeRow>([[root, { id: root, parent: null, depth: 0, tie: null }]]);
  const queue = [root];
  const near = neighbours(ids, bonds);
  for (const at of queue) {
    const depth = rows.get(at)!.depth + 1;
    for (const { id, tie } of near.get(at) ?? []) {
      if (rows.has(id)) continue;
      rows.set(id, { id, parent: at, depth, tie });
      queue.push(id);
    }
  }
  const loose = ids.filter((id) => !rows.has(id)).map((id) => ({ id, parent: null, depth: 0, tie: null }));
  return [...inOrder(root, rows, queue), ...loose];
}

interface Neighbour {
  readonly id: string;
  readonly tie: Tie;
}

/** What each part is bonded to, in the order of `ids`. */
function neighbours(ids: readonly string[], bonds: readonly Tie[]): ReadonlyMap<string, readonly Neighbour[]> {
  const places = new Map(ids.map((id, place) => [id, place]));
  const near = new Map<string, Neighbour[]>(ids.map((id) => [id, []]));
  for (const tie of bonds) {
    if (!places.has(tie.a) || !places.has(tie.b)) continue;
    near.get(tie.a)!.push({ id: tie.b, tie });
    near.get(tie.b)!.push({ id: tie.a, tie });
  }
  for (const list of near.values()) list.sort((a, b) => places.get(a.id)! - places.get(b.id)!);
  return near;
}

/** Parents before their children, each branch whole; without recursion, since a chain may be long. */
function inOrder(root: string, rows: ReadonlyMap<string, TreeRow>, found: readonly string[]): readonly TreeRow[] {
  const children = new Map<string, string[]>();
  for (const id of found) {
    const { parent } = rows.get(id)!;
    if (parent !== null) children.set(parent, [...(children.get(parent) ?? []), id]);
  }
  const ordered: TreeRow[] = [];
  for (const stack = [root]; stack.length > 0; ) {
    const id = stack.pop()!;
    ordered.push(rows.get(id)!);
    stack.push(...(children.get(id) ?? []).toReversed());
  }
  return ordered;
}
