/** A tree in a graph: pairs of nodes, the lesser first, in order. */
export interface GraphTree {
  readonly costM: number;
  readonly edges: readonly (readonly [number, number])[];
}

/**
 * The cheapest tree that joins some nodes of a graph (Dreyfus and Wagner, The Steiner problem in graphs, Networks 1, 1971,
 * from memory; exact). `cost[i * count + j]` is what the edge from i to j costs, Infinity where there is none; the same
 * both ways, none below 0. Time 3^k n + 2^k n^2 for k ends; meant for k up to 6. null: they cannot be joined.
 */
export function steinerOnGraph(count: number, cost: Float64Array, ends: readonly number[]): GraphTree | null {
  const root = ends[0];
  if (root === undefined) return { costM: 0, edges: [] };
  const others = ends.slice(1);
  const full = (1 << others.length) - 1;
  const best: Float64Array[] = [];
  const from: Int32Array[] = [];
  for (let set = 1; set <= full; set++) {
    best[set] = new Float64Array(count).fill(Infinity);
    from[set] = new Int32Array(count);
    startSet(set, others, best, from);
    spread(count, cost, best[set]!, from[set]!);
  }
  if (full === 0) return { costM: 0, edges: [] };
  if (!(best[full]![root]! < Infinity)) return null;
  return { costM: best[full]![root]!, edges: edgesOf(full, root, from) };
}

/** How a set is reached at a node: 0 not, or it is the end itself; n + 1 from node n; -s by joining set s with the rest. */
function startSet(set: number, others: readonly number[], best: Float64Array[], from: Int32Array[]): void {
  const own = best[set]!;
  const single = others.findIndex((_, i) => set === 1 << i);
  if (single >= 0) {
    own[others[single]!] = 0;
    return;
  }
  for (let part = (set - 1) & set; part > 0; part = (part - 1) & set) {
    const rest = set ^ part;
    if (part < rest) break;
    const [a, b] = [best[part]!, best[rest]!];
    for (let v = 0; v < own.length; v++) {
      const sum = a[v]! + b[v]!;
      if (sum < own[v]!) {
        own[v] = sum;
        from[set]![v] = -part;
      }
    }
  }
}

/** Dijkstra's algorithm from all nodes at once, each with what it costs already. */
function spread(count: number, cost: Float64Array, own: Float64Array, from: Int32Array): void {
  const isDone = new Uint8Array(count);
  for (;;) {
    let at = -1;
    for (let i = 0; i < count; i++) if (isDone[i] === 0 && own[i]! < (at < 0 ? Infinity : own[at]!)) at = i;
    if (at < 0) return;
    isDone[at] = 1;
    for (let j = 0, row = at * count; j < count; j++) {
      const sum = own[at]! + cost[row + j]!;
      if (sum < own[j]!) {
        own[j] = sum;
        from[j] = at + 1;
      }
    }
  }
}

function edgesOf(full: number, root: number, from: readonly Int32Array[]): GraphTree['edges'] {
  const found = new Map<string, readonly [number, number]>();
  const open: [set: number, node: number][] = [[full, root]];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const [set, node] = next;
    const how = from[set]![node]!;
    if (how > 0) {
      const pair: [number, number] = [Math.min(node, how - 1), Math.max(node, how - 1)];
      found.set(pair.join(), pair);
      open.push([set, how - 1]);
    } else if (how < 0) {
      open.push([-how, node], [set ^ -how, node]);
    }
  }
  return [...found.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}
