import { type Injection, ownResistances } from './network.ts';
import type { SolvedNetwork } from './solve-network.ts';

/** A branch or electrode of 0 ohm; remote earth is the node after the last. */
interface Link {
  readonly from: number;
  readonly to: number;
  readonly currents: (number | null)[];
  readonly at: number;
}

/**
 * Fills in the currents of branches and electrodes of 0 ohm, which no potential difference tells: by balance, where a link
 * is the only one between two sets of nodes; a link in a loop of zero resistance stays null.
 */
export function fillZeroOhmCurrents(
  { network }: SolvedNetwork,
  injections: readonly Injection[],
  branchA: (number | null)[],
  earthA: (number | null)[],
): void {
  const ground = network.nodeCount;
  const { nodes } = network.earth;
  const own = ownResistances(network.earth);
  const links: Link[] = [
    ...network.branches.flatMap(({ from, to, resistanceOhm }, at) =>
      resistanceOhm === 0 ? [{ from, to, currents: branchA, at }] : [],
    ),
    ...own.flatMap((ohm, at) => (ohm === 0 ? [{ from: nodes[at]!, to: ground, currents: earthA, at }] : [])),
  ];
  if (links.length === 0) return;
  const forest = grow(links, ground);
  const arriving = new Float64Array(ground + 1);
  for (const { node, currentA } of injections) arriving[node] = arriving[node]! + currentA;
  for (const [at, { from, to, resistanceOhm }] of network.branches.entries()) {
    if (resistanceOhm === 0) continue;
    arriving[from] = arriving[from]! - (branchA[at] ?? Number.NaN);
    arriving[to] = arriving[to]! + (branchA[at] ?? Number.NaN);
  }
  for (const [i, ohm] of own.entries()) {
    if (ohm !== 0) arriving[nodes[i]!] = arriving[nodes[i]!]! - (earthA[i] ?? Number.NaN);
  }
  hand(forest, arriving);
}

interface Forest {
  /** Nodes, each after the one it hangs on. */
  readonly visited: readonly number[];
  /** Link to the node it hangs on; null for a root. */
  readonly upOf: readonly (Link | null | undefined)[];
  /** How many links outside the forest go past the node's own link. */
  readonly loopsPast: Int32Array;
}

/** A forest of links, remote earth a root; every other link closes a loop. */
function grow(links: readonly Link[], ground: number): Forest {
  const linksAt = new Map<number, Link[]>();
  for (const link of links) {
    for (const end of [link.from, link.to]) {
      const known = linksAt.get(end);
      if (known === undefined) linksAt.set(end, [link]);
      else known.push(link);
    }
  }
  const upOf: (Link | null | undefined)[] = [];
  const depth = new Int32Array(ground + 1);
  const visited: number[] = [];
  for (const root of [ground, ...linksAt.keys()]) {
    if (upOf[root] !== undefined || !linksAt.has(root)) continue;
    upOf[root] = null;
    let next = visited.push(root) - 1;
    for (; next < visited.length; next++) {
      const node = visited[next]!;
      for (const link of linksAt.get(node)!) {
        const far = farEnd(link, node);
        if (upOf[far] !== undefined) continue;
        upOf[far] = link;
        depth[far] = depth[node]! + 1;
        visited.push(far);
      }
    }
  }
  const loopsPast = new Int32Array(ground + 1);
  for (const link of links)
    if (upOf[link.from] !== link && upOf[link.to] !== link) markLoop(link, upOf, depth, loopsPast);
  return { visited, upOf, loopsPast };
}

function markLoop(link: Link, upOf: Forest['upOf'], depth: Int32Array, loopsPast: Int32Array): void {
  let [a, b] = [link.from, link.to];
  while (a !== b) {
    if (depth[a]! < depth[b]!) [a, b] = [b, a];
    loopsPast[a] = loopsPast[a]! + 1;
    a = farEnd(upOf[a]!, a);
  }
}

/** What arrives at a node and at all that hangs on it leaves through its link. NaN stands for unknown. */
function hand({ visited, upOf, loopsPast }: Forest, arriving: Float64Array): void {
  for (const node of visited.toReversed()) {
    const link = upOf[node];
    if (link === null || link === undefined) continue;
    const current = arriving[node]!;
    const up = farEnd(link, node);
    arriving[up] = arriving[up]! + current;
    const known = loopsPast[node] === 0 && !Number.isNaN(current);
    link.currents[link.at] = known ? (link.from === node ? current : 0 - current) : null;
  }
}

function farEnd({ from, to }: Link, node: number): number {
  return from === node ? to : from;
}
