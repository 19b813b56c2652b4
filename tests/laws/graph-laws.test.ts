/** Laws of the graph algorithms, each held against the plainest way to work the same thing out: try it. */
import fc from 'fast-check';
import type { MultiUndirectedGraph } from 'graphology';
import { dijkstra, singleSourceLength } from 'graphology-shortest-path';
import { expect, test } from 'vitest';
import { bestWays } from '../../src/bonding/best-way.ts';
import { components } from '../../src/bonding/components.ts';
import { cutPoints, lossesFrom } from '../../src/bonding/cut-points.ts';
import { disjointWays } from '../../src/bonding/disjoint-ways.ts';
import { threeWay } from '../../src/bonding/three-way.ts';
import { type Bond, graphOf } from '../reference/random-multigraph.ts';

interface Metal {
  readonly nodes: readonly string[];
  readonly edges: readonly Bond[];
}

/**
 * Up to seven nodes and a dozen bonds, so that parallel bonds, islands and bonds from a node to itself are frequent.
 */
const metals: fc.Arbitrary<Metal> = fc.integer({ min: 1, max: 7 }).chain((count) => {
  const nodes = Array.from({ length: count }, (_, i) => `n${i}`);
  const end = fc.constantFrom(...nodes);
  const length = fc.option(fc.integer({ min: 0, max: 3 }), { nil: null, freq: 4 });
  return fc
    .array(fc.tuple(end, end, length), { maxLength: 12 })
    .map((list) => ({ nodes, edges: list.map(([a, b, m], i): Bond => [`e${i}`, a, b, m]) }));
});
const withPair = metals.chain((m) =>
  fc.tuple(fc.constant(m), fc.constantFrom(...m.nodes), fc.constantFrom(...m.nodes)),
);
const withSome = metals.chain((m) => fc.tuple(fc.constant(m), fc.subarray([...m.nodes])));

/** Ids that hang together with any of `starts`, by following edges until nothing is new. */
function reached(metal: Metal, starts: readonly string[], without: { edge?: string; node?: string } = {}): Set<string> {
  const found = new Set(starts.filter((id) => id !== without.node));
  for (let before = -1; before < found.size; ) {
    before = found.size;
    for (const [key, a, b] of metal.edges) {
      if (key === without.edge || a === without.node || b === without.node) continue;
      if (found.has(a) || found.has(b)) found.add(a).add(b);
    }
  }
  return found;
}

function pieces({ nodes, edges }: Metal): number {
  return components(graphOf({ nodes, edges })).length;
}

function withoutNode({ nodes, edges }: Metal, id: string): Metal {
  return { nodes: nodes.filter((n) => n !== id), edges: edges.filter(([, a, b]) => a !== id && b !== id) };
}

test('groups: two nodes stand in one list exactly when one is reached from the other', () => {
  fc.assert(
    fc.property(metals, (metal) => {
      const lists = components(graphOf(metal));
      expect(lists.flat().sort()).toEqual([...metal.nodes].sort());
      for (const list of lists) expect(list).toEqual([...reached(metal, [list[0]!])].sort());
      expect(lists.map((l) => l[0]!)).toEqual(lists.map((l) => l[0]!).sort());
    }),
  );
});

test('cut points: taking one away leaves more pieces, taking any other does not', () => {
  fc.assert(
    fc.property(metals, (metal) => {
      const cut = cutPoints(graphOf(metal));
      const whole = pieces(metal);
      const edges = metal.edges.filter(
        ([key]) => pieces({ ...metal, edges: metal.edges.filter(([k]) => k !== key) }) > whole,
      );
      const nodes = metal.nodes.filter((id) => pieces(withoutNode(metal, id)) > whole);
      expect(cut).toEqual({ edges: edges.map(([key]) => key), nodes });
    }),
    { numRuns: 300 },
  );
});

test('losses: exactly what is cut off from every root when each thing in turn is taken away', () => {
  fc.assert(
    fc.property(withSome, ([metal, roots]) => {
      const before = reached(metal, roots);
      const lostWithout = (without: { edge?: string; node?: string }) => {
        const after = reached(metal, roots, without);
        return [...before].filter((id) => !after.has(id) && id !== without.node).sort();
      };
      const tried = [
        ...metal.nodes.map((id) => ({ at: id, of: 'node', lost: lostWithout({ node: id }) })),
        ...metal.edges.map(([key]) => ({ at: key, of: 'edge', lost: lostWithout({ edge: key }) })).sort(byAt),
      ].filter(({ lost }) => lost.length > 0);
      const found = lossesFrom(graphOf(metal), roots);
      expect(found.map(({ at, of, lost }) => ({ at, of, lost: lost() }))).toEqual(tried);
      for (const { count, lost } of found) expect(count).toBe(lost().length);
    }),
    { numRuns: 300 },
  );
});

function byAt(a: { at: string }, b: { at: string }): number {
  return a.at < b.at ? -1 : 1;
}

/** Every way from a to b that passes no node twice, as the edges taken. */
function simpleWays(metal: Metal, a: string, b: string, been: readonly string[] = [a]): Bond[][] {
  if (a === b) return [[]];
  return metal.edges.flatMap((bond) => {
    const [, x, y] = bond;
    const next = x === a ? y : y === a ? x : null;
    if (next === null || been.includes(next)) return [];
    return simpleWays(metal, next, b, [...been, next]).map((rest) => [bond, ...rest]);
  });
}

function passed(way: readonly Bond[], a: string, b: string): string[] {
  return way.flatMap(([, x, y]) => [x, y]).filter((id) => id !== a && id !== b);
}

test('separate ways: as many as can be chosen among all ways so that no two share anything', () => {
  fc.assert(
    fc.property(withPair, fc.subarray(['n0', 'n1', 'n2', 'n3', 'n4', 'n5', 'n6']), ([metal, a, b], breakable) => {
      fc.pre(a !== b);
      const ways = simpleWays(metal, a, b);
      fc.pre(ways.length <= 40);
      const most = (shared: (id: string) => boolean) =>
        mostDisjoint(ways.map((way) => new Set([...way.map(([key]) => key), ...passed(way, a, b).filter(shared)])));
      const found = disjointWays(graphOf(metal), a, b, { breakableNode: (id) => breakable.includes(id) });
      expect(found).toEqual({ separate: most((id) => breakable.includes(id)), strict: most(() => true) });
      expect(disjointWays(graphOf(metal), b, a, { breakableNode: (id) => breakable.includes(id) })).toEqual(found);
    }),
    { numRuns: 200 },
  );
});

function mostDisjoint(sets: readonly ReadonlySet<string>[]): number {
  const [first, ...others] = sets;
  if (first === undefined) return 0;
  const apart = others.filter((set) => [...set].every((thing) => !first.has(thing)));
  return Math.max(1 + mostDisjoint(apart), others.length > apart.length ? mostDisjoint(others) : 0);
}

test('best way: the first of all ways by unknown lengths, length, pieces, then ids', () => {
  fc.assert(
    fc.property(withSome, fc.subarray(['n1', 'n3', 'n5']), ([metal, targets], closed) => {
      const way = bestWays(graphOf(metal), targets, { passes: (id) => !closed.includes(id) });
      for (const from of metal.nodes) {
        const all = targets.flatMap((to) => simpleWays(metal, from, to).map((bonds) => described(from, bonds)));
        const open = all.filter(({ nodes }) => nodes.slice(1, -1).every((id) => !closed.includes(id)));
        expect(way(from)).toEqual(open.sort(compareWays)[0] ?? null);
      }
    }),
    { numRuns: 200 },
  );
});

interface Described {
  readonly nodes: string[];
  readonly edges: string[];
  readonly unknownLengths: number;
  readonly lengthAtLeastM: number;
}

function described(from: string, bonds: readonly Bond[]): Described {
  const nodes = [from];
  for (const [, a, b] of bonds) nodes.push(nodes.at(-1) === a ? b : a);
  return {
    nodes,
    edges: bonds.map(([key]) => key),
    unknownLengths: bonds.filter(([, , , m]) => m === null).length,
    lengthAtLeastM: bonds.reduce((sum, [, , , m]) => sum + (m ?? 0), 0),
  };
}

function compareWays(a: Described, b: Described): number {
  const byCost =
    a.unknownLengths - b.unknownLengths || a.lengthAtLeastM - b.lengthAtLeastM || a.edges.length - b.edges.length;
  if (byCost !== 0) return byCost;
  for (let i = 0; i < a.edges.length; i++) {
    for (const [x, y] of [
      [a.nodes[i + 1]!, b.nodes[i + 1]!],
      [a.edges[i]!, b.edges[i]!],
    ]) {
      if (x !== y) return x! < y! ? -1 : 1;
    }
  }
  return 0;
}

test('best way: the order in which the graph was built changes nothing', () => {
  const shuffled = metals.chain((m) =>
    fc.tuple(
      fc.constant(m),
      fc.shuffledSubarray([...m.nodes], { minLength: m.nodes.length }),
      fc.shuffledSubarray([...m.edges], { minLength: m.edges.length }),
    ),
  );
  fc.assert(
    fc.property(shuffled, ([metal, nodes, edges]) => {
      const turned = edges.map(([key, a, b, m], i): Bond => (i % 2 === 0 ? [key, b, a, m] : [key, a, b, m]));
      const one = bestWays(graphOf(metal), ['n0']);
      const other = bestWays(graphOf({ nodes, edges: turned }), ['n0']);
      for (const id of metal.nodes) expect(other(id)).toEqual(one(id));
    }),
  );
});

test('best way: with one length everywhere, as many metres as a graph library counts hops', () => {
  fc.assert(
    fc.property(metals, (metal) => {
      const graph = graphOf({ ...metal, edges: metal.edges.map(([key, a, b]): Bond => [key, a, b, 1]) });
      const hops = singleSourceLength(graph, 'n0');
      const way = bestWays(graph, ['n0']);
      for (const id of metal.nodes) expect(way(id)?.lengthAtLeastM).toBe(hops[id]);
    }),
  );
});

test('best way: with all lengths known, as long as the way of a graph library', () => {
  fc.assert(
    fc.property(metals, (metal) => {
      // 0 is left out: the library would take a weight of 0 as it is, but its way could then wander.
      const edges = metal.edges.map(([key, a, b, m]): Bond => [key, a, b, (m ?? 0) + 1]);
      const graph = graphOf({ ...metal, edges });
      const nodesTo: Record<string, string[]> = dijkstra.singleSource(graph, 'n0', (_key, tie) => tie.lengthM.low);
      const way = bestWays(graph, ['n0']);
      for (const id of metal.nodes) expect(way(id)?.lengthAtLeastM ?? null).toBe(lengthAlong(edges, nodesTo[id]));
    }),
  );
});

/** Of parallel edges the shortest: the library names nodes only. */
function lengthAlong(edges: readonly Bond[], nodes: readonly string[] | undefined): number | null {
  if (nodes === undefined) return null;
  let sum = 0;
  for (let i = 1; i < nodes.length; i++) {
    const ends = [nodes[i - 1]!, nodes[i]!].sort().join();
    sum += Math.min(...edges.filter(([, a, b]) => [a, b].sort().join() === ends).map(([, , , m]) => m!));
  }
  return sum;
}

test('three-way: as all settings of the unknown edges say, with exactly the edges that ever turn the answer', () => {
  const edgesThere = fc.array(fc.boolean(), { minLength: 12, maxLength: 12 });
  fc.assert(
    fc.property(withPair, fc.boolean(), edgesThere, fc.boolean(), ([metal, a, b], two, there, fewKnown) => {
      const targets = two ? [a, b] : [a];
      const unknown = metal.edges.map(([key]) => key).filter((_, i) => !there[i]! || (fewKnown && i % 4 !== 0));
      const ask = threeWay(graphOf(metal), targets, { isThere: (key) => !unknown.includes(key) });
      const all = settings(metal, unknown, targets);
      for (const id of metal.nodes) expect(ask(id)).toEqual(triedOut(id, unknown, all));
    }),
    { numRuns: 150 },
  );
});

/** What is reached from the targets for each of the 2^k settings; bit i of the place: unknown edge i is there. */
function settings(metal: Metal, unknown: readonly string[], targets: readonly string[]): Set<string>[] {
  return Array.from({ length: 2 ** unknown.length }, (_, bits) => {
    const there = ([key]: Bond) => !unknown.includes(key) || ((bits >> unknown.indexOf(key)) & 1) === 1;
    return reached({ ...metal, edges: metal.edges.filter(there) }, targets);
  });
}

function triedOut(id: string, unknown: readonly string[], all: readonly ReadonlySet<string>[]) {
  const yes = all.map((found) => found.has(id));
  const decidedBy = unknown.filter((_, i) => yes.some((answer, bits) => answer !== yes[bits ^ (1 << i)]));
  const is = yes.every((answer) => answer) ? 'yes' : yes.some((answer) => answer) ? 'unknown' : 'no';
  return { is, decidedBy: decidedBy.sort() };
}

test('a choice of edges and nodes is the same as a graph without the others', () => {
  fc.assert(
    fc.property(withSome, fc.infiniteStream(fc.boolean()), ([metal, nodes], coins) => {
      const keys = metal.edges.map(([key]) => key).filter(() => coins.next().value === true);
      const choice = { edge: (key: string) => keys.includes(key), node: (id: string) => nodes.includes(id) };
      const rest: Metal = {
        nodes: metal.nodes.filter((id) => nodes.includes(id)),
        edges: metal.edges.filter(([key, a, b]) => keys.includes(key) && nodes.includes(a) && nodes.includes(b)),
      };
      const seen = (graph: MultiUndirectedGraph, some: typeof choice | undefined) => [
        components(graph, some),
        cutPoints(graph, some),
        lossesFrom(graph, nodes.slice(0, 1), some).map(({ at, of, lost }) => [at, of, lost()]),
        nodes.map(bestWays(graph, nodes.slice(0, 2), some)),
        nodes.map(threeWay(graph, nodes.slice(0, 1), { ...some, isThere: (key) => key < 'e2' })),
      ];
      expect(seen(graphOf(metal), choice)).toEqual(seen(graphOf(rest), undefined));
    }),
  );
});
