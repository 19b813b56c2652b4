/**
 * Arcs come in pairs: arc k and arc `k ^ 1` run between the same nodes in opposite directions; what one carries, the
 * other may take back.
 */
export interface FlowNetwork {
  /** Arc → the node that it leads to. */
  readonly heads: Int32Array;
  /** The arcs that leave node n are `leaving[rows[n]]` up to, without, `leaving[rows[n + 1]]`. */
  readonly rows: Int32Array;
  readonly leaving: Int32Array;
  readonly search: Search;
}

/** What a search writes on, kept so that no question has to lay it out anew. */
interface Search {
  /** Arc → how much it may still carry: between two questions its capacity. */
  readonly room: Int32Array;
  /** The arc by which each node was reached, where `seenIn` says that it was reached in this round. */
  readonly cameBy: Int32Array;
  readonly seenIn: Int32Array;
  round: number;
}

/** A capacity that no number of ways reaches, with room to add to. */
export const UNLIMITED = 0x3fffffff;

/** `arcs` lists from, to, capacity for each arc; the arc against it starts with 0. */
export function flowNetwork(nodeCount: number, arcs: Int32Array): FlowNetwork {
  const arcCount = (arcs.length / 3) * 2;
  const heads = new Int32Array(arcCount);
  const room = new Int32Array(arcCount);
  const rows = new Int32Array(nodeCount + 1);
  for (let k = 0, i = 0; k < arcCount; k += 2, i += 3) {
    heads[k] = arcs[i + 1]!;
    heads[k + 1] = arcs[i]!;
    room[k] = arcs[i + 2]!;
    rows[arcs[i]! + 1]!++;
    rows[arcs[i + 1]! + 1]!++;
  }
  for (let n = 0; n < nodeCount; n++) rows[n + 1]! += rows[n]!;
  const free = rows.slice(0, nodeCount);
  const leaving = new Int32Array(arcCount);
  for (let k = 0; k < arcCount; k++) leaving[free[heads[k ^ 1]!]!++] = k;
  const search = { room, cameBy: new Int32Array(nodeCount), seenIn: new Int32Array(nodeCount), round: 0 };
  return { heads, rows, leaving, search };
}

/**
 * How many units can go from one node to another, counted up to `bound`: a unit is sent along a shortest way that still
 * has room, as long as there is one. Time: (answer + 1) times linear.
 * After J. Edmonds and R. M. Karp, "Theoretical improvements in algorithmic efficiency for network flow problems",
 * J. ACM 19 (1972) 248-264.
 */
export function mostUnits(network: FlowNetwork, from: number, to: number, bound: number): number {
  const { heads, search } = network;
  const { room, cameBy } = search;
  const taken: number[] = [];
  let units = 0;
  while (units < bound && findRoom(network, from, to)) {
    for (let n = to; n !== from; ) {
      const arc = cameBy[n]!;
      room[arc]!--;
      room[arc ^ 1]!++;
      taken.push(arc);
      n = heads[arc ^ 1]!;
    }
    units++;
  }
  for (const arc of taken) {
    room[arc]!++;
    room[arc ^ 1]!--;
  }
  return units;
}

/** Breadth first along arcs with room; leaves in `cameBy` the arcs by which nodes were reached. */
function findRoom({ heads, rows, leaving, search }: FlowNetwork, from: number, to: number): boolean {
  const { room, cameBy, seenIn } = search;
  const round = ++search.round;
  seenIn[from] = round;
  const queue = [from];
  for (const n of queue) {
    for (let r = rows[n]!; r < rows[n + 1]!; r++) {
      const arc = leaving[r]!;
      const next = heads[arc]!;
      if (room[arc]! === 0 || seenIn[next] === round) continue;
      seenIn[next] = round;
      cameBy[next] = arc;
      if (next === to) return true;
      queue.push(next);
    }
  }
  return false;
}
