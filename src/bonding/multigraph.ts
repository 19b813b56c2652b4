/** What a graph shows of an edge: its key and facts, the ids and the facts of its ends. */
type SeeEdge<N, T> = (key: string, facts: T, a: string, b: string, factsA: N, factsB: N) => void;

/** The graph as numbers, in the order in which nodes and edges were added. Not to be changed. */
export interface Numbered<T> {
  readonly ids: readonly string[];
  readonly keys: readonly string[];
  /** Facts of each edge. */
  readonly facts: readonly T[];
  readonly numberOf: ReadonlyMap<string, number>;
  /** Ends of edge e: `ends[2 * e]` and `ends[2 * e + 1]`. */
  readonly ends: readonly number[];
}

/**
 * An undirected multigraph: nodes with ids, edges with keys, facts of both. Its methods are called as in graphology; beside
 * the names it keeps numbers, so that an algorithm has nothing to look up, and it takes no time to load. Throws RangeError
 * for a name that it has not, or that it has already.
 */
export class Multigraph<N extends object = object, T extends object = object> {
  private readonly ids: string[] = [];
  private readonly numberOf = new Map<string, number>();
  private readonly nodeFacts: N[] = [];
  private readonly keys: string[] = [];
  private readonly edgeOf = new Map<string, number>();
  private readonly edgeFacts: T[] = [];
  private readonly ends: number[] = [];
  /** Edges at each node; one from a node to itself stands there twice. */
  private readonly incident: number[][] = [];

  get order(): number {
    return this.ids.length;
  }

  get size(): number {
    return this.keys.length;
  }

  addNode(id: string, facts: N): void {
    if (this.numberOf.has(id)) throw new RangeError(`the graph has a node ${id} already`);
    this.numberOf.set(id, this.ids.length);
    this.ids.push(id);
    this.nodeFacts.push(facts);
    this.incident.push([]);
  }

  addUndirectedEdgeWithKey(key: string, a: string, b: string, facts: T): void {
    if (this.edgeOf.has(key)) throw new RangeError(`the graph has an edge ${key} already`);
    const [from, to] = [this.nodeNumber(a), this.nodeNumber(b)];
    const edge = this.keys.push(key) - 1;
    this.edgeOf.set(key, edge);
    this.edgeFacts.push(facts);
    this.ends.push(from, to);
    this.incident[from]!.push(edge);
    this.incident[to]!.push(edge);
  }

  /** Takes out a node that no edge meets. */
  dropNode(id: string): void {
    const n = this.nodeNumber(id);
    if (this.incident[n]!.length > 0) throw new RangeError(`edges meet the node ${id}`);
    for (const list of [this.ids, this.nodeFacts, this.incident]) list.splice(n, 1);
    this.numberOf.delete(id);
    for (let later = n; later < this.ids.length; later++) this.numberOf.set(this.ids[later]!, later);
    for (let i = 0; i < this.ends.length; i++) if (this.ends[i]! > n) this.ends[i]!--;
  }

  numbered(): Numbered<T> {
    return { ids: this.ids, keys: this.keys, facts: this.edgeFacts, numberOf: this.numberOf, ends: this.ends };
  }

  hasNode(id: string): boolean {
    return this.numberOf.has(id);
  }

  /** With one name: whether there is an edge of that key; with two: whether any edge joins these nodes. */
  hasEdge(keyOrNode: string, other?: string): boolean {
    if (other === undefined) return this.edgeOf.has(keyOrNode);
    const [a, b] = [this.nodeNumber(keyOrNode), this.nodeNumber(other)];
    const [few, many] = this.incident[a]!.length < this.incident[b]!.length ? [a, b] : [b, a];
    return this.incident[few]!.some((e) => this.ends[2 * e]! + this.ends[2 * e + 1]! - few === many);
  }

  /** How many ends of edges meet the node. */
  degree(id: string): number {
    return this.incident[this.nodeNumber(id)]!.length;
  }

  /** Adds the node if it is not there yet. */
  mergeNode(id: string, facts: N): void {
    if (!this.numberOf.has(id)) this.addNode(id, facts);
  }

  extremities(key: string): [string, string] {
    const e = this.edgeNumber(key);
    return [this.ids[this.ends[2 * e]!]!, this.ids[this.ends[2 * e + 1]!]!];
  }

  getNodeAttributes(id: string): N {
    return this.nodeFacts[this.nodeNumber(id)]!;
  }

  getNodeAttribute<K extends keyof N>(id: string, name: K): N[K] {
    return this.nodeFacts[this.nodeNumber(id)]![name];
  }

  getEdgeAttributes(key: string): T {
    return this.edgeFacts[this.edgeNumber(key)]!;
  }

  getEdgeAttribute<K extends keyof T>(key: string, name: K): T[K] {
    return this.edgeFacts[this.edgeNumber(key)]![name];
  }

  filterNodes(isWanted: (id: string, facts: N) => boolean): string[] {
    return this.ids.filter((id, n) => isWanted(id, this.nodeFacts[n]!));
  }

  filterEdges(isWanted: (key: string, facts: T) => boolean): string[] {
    return this.keys.filter((key, e) => isWanted(key, this.edgeFacts[e]!));
  }

  forEachNode(see: (id: string, facts: N) => void): void {
    for (let n = 0; n < this.ids.length; n++) see(this.ids[n]!, this.nodeFacts[n]!);
  }

  forEachEdge(see: SeeEdge<N, T>): void {
    for (let e = 0; e < this.keys.length; e++) {
      const [a, b] = [this.ends[2 * e]!, this.ends[2 * e + 1]!];
      see(this.keys[e]!, this.edgeFacts[e]!, this.ids[a]!, this.ids[b]!, this.nodeFacts[a]!, this.nodeFacts[b]!);
    }
  }

  private nodeNumber(id: string): number {
    return this.numberOf.get(id) ?? missing('node', id);
  }

  private edgeNumber(key: string): number {
    return this.edgeOf.get(key) ?? missing('edge', key);
  }
}

function missing(what: string, name: string): never {
  throw new RangeError(`the graph has no ${what} ${name}`);
}
