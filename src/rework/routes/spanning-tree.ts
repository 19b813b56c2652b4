import type { NearestWays } from './nearest-ways.ts';
import type { RouteGraph } from './route-graph.ts';
import type { GraphTree } from './steiner-on-graph.ts';

/**
 * A tree that joins all ends by their shortest ways to each other, without junctions other than where ways meet (Kou,
 * Markowsky and Berman, A fast algorithm for Steiner trees, Acta Informatica 15, 1981, from memory): at most 2 (1 - 1/k)
 * times the shortest there is, for k ends. `atLeastM` is that bound turned round: no tree costs less. null: some end cannot
 * be reached.
 */
export function spanningTree(
  graph: RouteGraph,
  ends: readonly number[],
  ways: readonly NearestWays[],
): (GraphTree & { readonly atLeastM: number }) | null {
  const pairs: (readonly [number, number])[] = [];
  let wholeM = 0;
  for (const [from, to] of minimumPairs(ends.length, (a, b) => ways[a]!.costM[ends[b]!]!)) {
    const costM = ways[from]!.costM[ends[to]!]!;
    const way = ways[from]!.way(ends[to]!);
    if (way === null) return null;
    wholeM += costM;
    pairs.push(...way.slice(1).map((n, i): readonly [number, number] => [way[i]!, n]));
  }
  const atLeastM = ends.length < 2 ? 0 : (wholeM * ends.length) / (2 * (ends.length - 1));
  return { ...prunedTree(graph, ends, pairs), atLeastM };
}

/** Pairs of a minimum spanning tree over `count` things (Prim); of equal ones the first. */
function minimumPairs(count: number, costM: (a: number, b: number) => number): readonly (readonly [number, number])[] {
  const left = Array.from({ length: Math.max(0, count - 1) }, (_, i) => ({
    to: i + 1,
    from: 0,
    costM: costM(0, i + 1),
  }));
  const found: (readonly [number, number])[] = [];
  while (left.length > 0) {
    const next = left.reduce((best, x) => (x.costM < best.costM ? x : best));
    left.splice(left.indexOf(next), 1);
    found.push([next.from, next.to]);
    for (const x of left) {
      const cost = costM(next.to, x.to);
      if (cost < x.costM) Object.assign(x, { from: next.to, costM: cost });
    }
  }
  return found;
}

/** A tree out of pieces that may close rings: the dearest piece of each ring is left out, and what leads to no end. */
export function prunedTree(
  graph: RouteGraph,
  ends: readonly number[],
  pairs: readonly (readonly [number, number])[],
): GraphTree {
  const unique = new Map(
    pairs.map(([a, b]) => [`${Math.min(a, b)} ${Math.max(a, b)}`, [Math.min(a, b), Math.max(a, b)]]),
  );
  const all = [...unique.values()]
    .map(([a, b]) => ({ a: a!, b: b!, costM: graph.link(a!, b!)?.costM ?? Infinity }))
    .sort((x, y) => x.costM - y.costM || x.a - y.a || x.b - y.b);
  const group = new Map<number, number>();
  const groupOf = (n: number): number => {
    let at = n;
    for (let up = group.get(at); up !== undefined; up = group.get(at)) at = up;
    return at;
  };
  let kept = all.filter(({ a, b }) => {
    const [x, y] = [groupOf(a), groupOf(b)];
    if (x !== y) group.set(x, y);
    return x !== y;
  });
  for (let before = -1; before !== kept.length; ) {
    before = kept.length;
    const uses = new Map<number, number>();
    for (const { a, b } of kept) for (const n of [a, b]) uses.set(n, (uses.get(n) ?? 0) + 1);
    kept = kept.filter(({ a, b }) => [a, b].every((n) => uses.get(n)! > 1 || ends.includes(n)));
  }
  const edges = kept.map(({ a, b }): readonly [number, number] => [a, b]).sort((x, y) => x[0] - y[0] || x[1] - y[1]);
  return { costM: kept.reduce((sum, e) => sum + e.costM, 0), edges };
}
