import type { ConductanceGraph } from './conductance-graph.ts';
import { DoubleDouble } from './double-double.ts';

/** The part of a conductance graph that is still in place while nodes are taken out, made to be changed. */
export class Mesh {
  readonly high: number[] = [];
  readonly low: number[] = [];
  /** Per node: its neighbours, taken-out ones among them until `tidy` is called, and the edge to each. */
  readonly neighbours: number[][];
  readonly edges: number[][];
  readonly degree: Int32Array;
  readonly out: Uint8Array;
  private readonly slotOf: Int32Array;
  private readonly sum = new DoubleDouble();

  constructor({ nodeCount, edges }: ConductanceGraph) {
    this.neighbours = Array.from({ length: nodeCount }, () => []);
    this.edges = Array.from({ length: nodeCount }, () => []);
    this.degree = new Int32Array(nodeCount);
    this.out = new Uint8Array(nodeCount);
    this.slotOf = new Int32Array(nodeCount).fill(-1);
    const edgeOf = new Map<number, number>();
    for (const { a, b, conductance } of edges) {
      const key = a < b ? a * nodeCount + b : b * nodeCount + a;
      const known = edgeOf.get(key);
      if (known === undefined) edgeOf.set(key, this.join(a, b, conductance.high, conductance.low));
      else this.raise(known, conductance.high, conductance.low);
    }
  }

  /** Forgets the neighbours of a node that were taken out. */
  tidy(node: number): void {
    const neighbours = this.neighbours[node]!;
    const edges = this.edges[node]!;
    let kept = 0;
    for (let at = 0; at < neighbours.length; at++) {
      if (this.out[neighbours[at]!] === 1) continue;
      neighbours[kept] = neighbours[at]!;
      edges[kept] = edges[at]!;
      kept++;
    }
    neighbours.length = kept;
    edges.length = kept;
  }

  /** Adds to `node`'s conductance to each of `others` from position `from` on: `share` times the conductance given. */
  addFrom(node: number, shareHigh: number, shareLow: number, others: readonly Spoke[], from: number): void {
    this.tidy(node);
    const neighbours = this.neighbours[node]!;
    const edges = this.edges[node]!;
    for (let at = 0; at < neighbours.length; at++) this.slotOf[neighbours[at]!] = edges[at]!;
    const known = neighbours.length;
    for (let at = from; at < others.length; at++) {
      const { node: other, high, low } = others[at]!;
      this.sum.set(0).addProduct(shareHigh, shareLow, high, low);
      const edge = this.slotOf[other]!;
      if (edge === -1) this.join(node, other, this.sum.high, this.sum.low);
      else this.raise(edge, this.sum.high, this.sum.low);
    }
    for (let at = 0; at < known; at++) this.slotOf[neighbours[at]!] = -1;
  }

  private join(a: number, b: number, high: number, low: number): number {
    const edge = this.high.push(high) - 1;
    this.low.push(low);
    this.neighbours[a]!.push(b);
    this.edges[a]!.push(edge);
    this.neighbours[b]!.push(a);
    this.edges[b]!.push(edge);
    this.degree[a] = this.degree[a]! + 1;
    this.degree[b] = this.degree[b]! + 1;
    return edge;
  }

  private raise(edge: number, high: number, low: number): void {
    const sum = this.sum.set(this.high[edge]!, this.low[edge]!).add(high, low);
    this.high[edge] = sum.high;
    this.low[edge] = sum.low;
  }
}

/** One conductance of the node that is being taken out. */
export interface Spoke {
  readonly node: number;
  readonly high: number;
  readonly low: number;
}
