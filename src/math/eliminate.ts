import type { ConductanceGraph, Elimination } from './conductance-graph.ts';
import { DegreeQueue } from './degree-queue.ts';
import { DoubleDouble } from './double-double.ts';
import { Mesh, type Spoke } from './mesh.ts';

/** `failingNode`: the conductances are not positive definite, seen at this node. */
export type EliminationResult =
  | { readonly ok: true; readonly elimination: Elimination }
  | { readonly ok: false; readonly failingNode: number };

/**
 * Takes all nodes out, the one with the fewest neighbours first. The sum of a node's conductances is built anew from its
 * edges and its leak each time, so that without negative conductances every result keeps the relative accuracy of one
 * operation (about 1e-31) times the number of steps, however far the conductances lie apart.
 *
 * Source: W. K. Grassmann, M. I. Taksar, D. P. Heyman, "Regenerative analysis and steady state distributions for Markov
 * chains", Oper. Res. 33 (1985) 1107-1116 (from memory); star-mesh after L. Rosen, A.I.E.E. 43 (1924) (from memory).
 */
export function eliminate(graph: ConductanceGraph): EliminationResult {
  const { nodeCount } = graph;
  const mesh = new Mesh(graph);
  const leak = {
    high: Float64Array.from(graph.toGround, (g) => g.high),
    low: Float64Array.from(graph.toGround, (g) => g.low),
  };
  const queue = new DegreeQueue(mesh.degree);
  const columns = emptyColumns(nodeCount);
  for (let step = 0; step < nodeCount; step++) {
    const node = queue.take();
    columns.order[step] = node;
    if (!takeOut(node, step, mesh, leak, columns)) return { ok: false, failingNode: node };
    for (let at = columns.start[step]!; at < columns.start[step + 1]!; at++) queue.tell(columns.neighbour[at]!);
  }
  return { ok: true, elimination: finish(nodeCount, columns) };
}

interface Leak {
  readonly high: Float64Array;
  readonly low: Float64Array;
}

interface Columns {
  readonly order: Int32Array;
  readonly start: Int32Array;
  readonly neighbour: number[];
  readonly shareHigh: number[];
  readonly shareLow: number[];
  readonly pivotHigh: Float64Array;
  readonly pivotLow: Float64Array;
}

function emptyColumns(nodeCount: number): Columns {
  return {
    order: new Int32Array(nodeCount),
    start: new Int32Array(nodeCount + 1),
    neighbour: [],
    shareHigh: [],
    shareLow: [],
    pivotHigh: new Float64Array(nodeCount),
    pivotLow: new Float64Array(nodeCount),
  };
}

function takeOut(node: number, step: number, mesh: Mesh, leak: Leak, columns: Columns): boolean {
  mesh.tidy(node);
  const spokes = spokesOf(node, mesh);
  const sum = new DoubleDouble().set(leak.high[node]!, leak.low[node]!);
  for (const { high, low } of spokes) sum.add(high, low);
  const { high: pivotHigh, low: pivotLow } = sum;
  const isFloatingRoot = spokes.length === 0 && pivotHigh === 0;
  if (!isFloatingRoot && !(pivotHigh > 0)) return false;
  columns.pivotHigh[step] = pivotHigh;
  columns.pivotLow[step] = pivotLow;
  mesh.out[node] = 1;
  mesh.degree[node] = -1;
  for (const [at, { node: other, high, low }] of spokes.entries()) {
    const share = sum.set(high, low).divide(pivotHigh, pivotLow);
    const { high: shareHigh, low: shareLow } = share;
    columns.neighbour.push(other);
    columns.shareHigh.push(shareHigh);
    columns.shareLow.push(shareLow);
    mesh.degree[other] = mesh.degree[other]! - 1;
    addLeak(leak, other, node, shareHigh, shareLow, sum);
    if (at + 1 < spokes.length) mesh.addFrom(other, shareHigh, shareLow, spokes, at + 1);
  }
  columns.start[step + 1] = columns.neighbour.length;
  return true;
}

/** Shortest list of neighbours first: the longest, a bar with hundreds of wires, is then never read through. */
function spokesOf(node: number, mesh: Mesh): readonly Spoke[] {
  const edges = mesh.edges[node]!;
  const spokes = mesh.neighbours[node]!.map((other, at) => {
    const edge = edges[at]!;
    return { node: other, high: mesh.high[edge]!, low: mesh.low[edge]! };
  });
  const length = (spoke: Spoke): number => mesh.neighbours[spoke.node]!.length;
  return spokes.length < 2 ? spokes : spokes.sort((a, b) => length(a) - length(b) || a.node - b.node);
}

function addLeak(leak: Leak, to: number, from: number, high: number, low: number, sum: DoubleDouble): void {
  if (leak.high[from] === 0) return;
  sum.set(leak.high[to]!, leak.low[to]!).addProduct(high, low, leak.high[from]!, leak.low[from]!);
  leak.high[to] = sum.high;
  leak.low[to] = sum.low;
}

function finish(nodeCount: number, columns: Columns): Elimination {
  const { order, start } = columns;
  const stepOf = new Int32Array(nodeCount);
  for (let step = 0; step < nodeCount; step++) stepOf[order[step]!] = step;
  const rootOf = new Int32Array(nodeCount);
  const floats = new Uint8Array(nodeCount);
  for (let step = nodeCount - 1; step >= 0; step--) {
    const node = order[step]!;
    const isRoot = start[step] === start[step + 1];
    const root = isRoot ? node : rootOf[columns.neighbour[start[step]!]!]!;
    rootOf[node] = root;
    floats[node] = columns.pivotHigh[stepOf[root]!] === 0 ? 1 : 0;
  }
  return {
    nodeCount,
    order,
    stepOf,
    start,
    neighbour: Int32Array.from(columns.neighbour),
    shareHigh: Float64Array.from(columns.shareHigh),
    shareLow: Float64Array.from(columns.shareLow),
    pivotHigh: columns.pivotHigh,
    pivotLow: columns.pivotLow,
    rootOf,
    floats,
  };
}
