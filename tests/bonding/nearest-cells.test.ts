import fc from 'fast-check';
import { MultiUndirectedGraph } from 'graphology';
import { expect, test } from 'vitest';
import { csr } from '../../src/bonding/csr.ts';
import { nearestCells, wayBack } from '../../src/bonding/nearest-cells.ts';

interface Case {
  readonly count: number;
  readonly edges: readonly (readonly [number, number, number | null])[];
  /** Cell of each node that is given one, else -1. */
  readonly given: readonly number[];
}

/** Up to seven nodes, edges of cost 1 to 3 or without a way, three cells of which the last starts far off. */
const cases: fc.Arbitrary<Case> = fc.integer({ min: 1, max: 7 }).chain((count) => {
  const node = fc.integer({ min: 0, max: count - 1 });
  const cost = fc.option(fc.integer({ min: 1, max: 3 }), { nil: null, freq: 5 });
  return fc.record({
    count: fc.constant(count),
    edges: fc.array(fc.tuple(node, node, cost), { maxLength: 12 }),
    given: fc.array(fc.integer({ min: -1, max: 2 }), { minLength: count, maxLength: count }),
  });
});

const far = 100;
const startOf = (cell: number) => (cell === 2 ? far : 0);

function cellsOf({ count, edges, given }: Case, order: readonly number[]) {
  const graph = new MultiUndirectedGraph();
  for (const n of order) if (n < count) graph.addNode(`n${n}`);
  const listed = edges.map((edge, i) => [i, edge] as const);
  for (const [i, [a, b]] of order[0] === 0 ? listed : listed.toReversed()) {
    graph.addUndirectedEdgeWithKey(`e${String(i).padStart(2, '0')}`, `n${a}`, `n${b}`);
  }
  const net = csr(graph);
  const costOf = (e: number) => edges[Number(net.keys[e]!.slice(1))]![2];
  const placed = Int32Array.from(net.ids, (id) => given[Number(id.slice(1))]!);
  const cells = nearestCells({ net, given: placed, startOf, costOf });
  const numberOf = (n: number) => net.numberOf.get(`n${n}`)!;
  return { net, cells, costOf, numberOf };
}

/** The least cost from any node of a cell, through nodes that were given none: tried until nothing gets better. */
function nearest({ count, edges, given }: Case): readonly (readonly [cost: number, cell: number])[] {
  const best: [number, number][] = Array.from({ length: count }, (_, n) =>
    given[n] === -1 ? [Number.POSITIVE_INFINITY, -1] : [startOf(given[n]!), given[n]!],
  );
  for (let round = 0; round < count; round++) {
    for (const [a, b, cost] of edges.flatMap((e) => [e, [e[1], e[0], e[2]] as const])) {
      if (cost === null || given[b] !== -1 || best[a]![1] === -1) continue;
      const [reached, cell] = [best[a]![0] + cost, best[a]![1]];
      if (reached < best[b]![0] || (reached === best[b]![0] && cell < best[b]![1])) best[b] = [reached, cell];
    }
  }
  return best;
}

const inOrder = [0, 1, 2, 3, 4, 5, 6];

test('every node goes to the nearest cell, of equals to the first, and its way back costs just that', () => {
  fc.assert(
    fc.property(cases, (one) => {
      const { net, cells, costOf, numberOf } = cellsOf(one, inOrder);
      for (const [n, [cost, cell]] of nearest(one).entries()) {
        const node = numberOf(n);
        expect(cells.of[node]).toBe(cell);
        const back = wayBack(net, cells, node);
        const end = back.at(-1)?.to ?? node;
        expect(one.given[Number(net.ids[end]!.slice(1))]).toBe(cell);
        const paid = back.reduce((sum, { edge }) => sum + costOf(edge)!, startOf(cell));
        expect(cell === -1 ? back.length : paid).toBe(cell === -1 ? 0 : cost);
      }
    }),
    { numRuns: 500 },
  );
});

test('the order in which a graph was built decides nothing', () => {
  fc.assert(
    fc.property(cases, (one) => {
      const [built, turned] = [cellsOf(one, inOrder), cellsOf(one, inOrder.toReversed())];
      const waysOf = ({ net, cells, numberOf }: typeof built) =>
        one.given.map((_cell, n) => wayBack(net, cells, numberOf(n)).map(({ edge }) => net.keys[edge]));
      expect(waysOf(turned)).toEqual(waysOf(built));
    }),
    { numRuns: 500 },
  );
});
