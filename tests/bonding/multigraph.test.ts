import fc from 'fast-check';
import { MultiUndirectedGraph } from 'graphology';
import { expect, test } from 'vitest';
import { csr } from '../../src/bonding/csr.ts';
import { Multigraph } from '../../src/bonding/multigraph.ts';

interface Named {
  readonly name: string;
}

type Joins = readonly (readonly [a: number, b: number])[];

/** The same graph twice: ours and that of a graph library. Nodes n0, n1 ...; edges e0, e1 ... */
function both(count: number, joins: Joins) {
  const [ours, theirs] = [new Multigraph<Named, Named>(), new MultiUndirectedGraph<Named, Named>()];
  for (const graph of [ours, theirs]) {
    for (let n = 0; n < count; n++) graph.addNode(`n${n}`, { name: `node ${n}` });
    joins.forEach(([a, b], e) => {
      graph.addUndirectedEdgeWithKey(`e${e}`, `n${a % count}`, `n${b % count}`, { name: `edge ${e}` });
    });
  }
  return { ours, theirs };
}

const joins = fc.array(fc.tuple(fc.nat(11), fc.nat(11)), { maxLength: 30 });

test('says what a graph library says of the same graph', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 12 }), joins, (count, pairs) => {
      const { ours, theirs } = both(count, pairs);
      const ids = theirs.nodes();
      const seen = (graph: typeof ours | typeof theirs) => ({
        size: [graph.order, graph.size],
        nodes: graph.filterNodes(() => true).map((id) => [id, graph.getNodeAttributes(id), graph.degree(id)]),
        edges: graph.filterEdges(({ length }) => length > 0).map((key) => [key, graph.getEdgeAttributes(key).name]),
        joined: ids.flatMap((a) => ids.map((b) => graph.hasEdge(a, b))),
      });
      expect(seen(ours)).toEqual(seen(theirs));
      const met: unknown[] = [];
      theirs.forEachEdge((...all) => met.push(all.slice(0, 6)));
      const ourMet: unknown[] = [];
      ours.forEachEdge((...all) => ourMet.push(all));
      expect(ourMet).toEqual(met);
      for (const key of theirs.edges()) expect(ours.extremities(key)).toEqual(theirs.extremities(key));
    }),
  );
});

test('a node that no edge meets is taken out as if it had never been there', () => {
  const { ours } = both(4, [
    [0, 2],
    [2, 3],
  ]);
  ours.dropNode('n1');
  const { ids, ends } = csr(ours);
  expect([ids, [...ends]]).toEqual([
    ['n0', 'n2', 'n3'],
    [0, 1, 1, 2],
  ]);
  expect(() => ours.dropNode('n2')).toThrow(RangeError);
});

test('refuses a name that it has not, or has already', () => {
  const { ours } = both(2, [[0, 1]]);
  expect(() => ours.addNode('n1', { name: '' })).toThrow(/n1/);
  expect(() => ours.addUndirectedEdgeWithKey('e0', 'n0', 'n1', { name: '' })).toThrow(/e0/);
  expect(() => ours.addUndirectedEdgeWithKey('e1', 'n0', 'n9', { name: '' })).toThrow(/n9/);
  expect(() => ours.getNodeAttributes('n9')).toThrow(/n9/);
  expect(() => ours.getEdgeAttribute('e9', 'name')).toThrow(/e9/);
});
