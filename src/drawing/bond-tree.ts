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
  for (const at of queue) {
    const depth = rows.get(at)!.depth + 1;
    for (const { id, tie } of neighbours(at, ids, bonds)) {
      if (rows.has(id)) continue;
      rows.set(id, { id, parent: at, depth, tie });
      queue.push(id);
    }
  }
  const loose = ids.filter((id) => !rows.has(id)).map((id) => ({ id, parent: null, depth: 0, tie: null }));
  return [...inOrder(root, rows, queue), ...loose];
}

function neighbours(at: string, ids: readonly string[], bonds: readonly Tie[]) {
  const found = bonds.flatMap((tie) =>
    tie.a === at ? [{ id: tie.b, tie }] : tie.b === at ? [{ id: tie.a, tie }] : [],
  );
  return found.filter((n) => ids.includes(n.id)).sort((a, b) => ids.indexOf(a.id) - ids.indexOf(b.id));
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
