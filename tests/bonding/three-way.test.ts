import { MultiUndirectedGraph } from 'graphology';
import { expect, test } from 'vitest';
import { threeWay } from '../../src/bonding/three-way.ts';

/**
 * service = bar ? clamp ? mast, and a second unknown tie from clamp to mast; from the mast an unknown tie to a guy that
 * leads nowhere; rod = rod2 apart from all.
 */
function yard(): MultiUndirectedGraph {
  const graph = new MultiUndirectedGraph();
  for (const id of ['service', 'bar', 'clamp', 'mast', 'guy', 'rod', 'rod2']) graph.addNode(id);
  const tie = (key: string, a: string, b: string, is: 'there' | 'unknown') =>
    graph.addUndirectedEdgeWithKey(key, a, b, { is });
  tie('c1', 'service', 'bar', 'there');
  tie('u1', 'bar', 'clamp', 'unknown');
  tie('u3', 'clamp', 'mast', 'unknown');
  tie('u2', 'mast', 'clamp', 'unknown');
  tie('u4', 'mast', 'guy', 'unknown');
  tie('u5', 'bar', 'service', 'unknown');
  tie('c2', 'rod', 'rod2', 'there');
  return graph;
}

test('an unknown tie decides only where it can turn the answer', () => {
  const ask = threeWay(yard(), ['service']);
  expect(ask('service')).toEqual({ is: 'yes', decidedBy: [] });
  expect(ask('bar')).toEqual({ is: 'yes', decidedBy: [] });
  expect(ask('clamp')).toEqual({ is: 'unknown', decidedBy: ['u1'] });
  expect(ask('mast')).toEqual({ is: 'unknown', decidedBy: ['u1', 'u2', 'u3'] });
  expect(ask('guy')).toEqual({ is: 'unknown', decidedBy: ['u1', 'u2', 'u3', 'u4'] });
  expect(ask('rod')).toEqual({ is: 'no', decidedBy: [] });
});

test('in a ring of unknown ties each one decides, whichever way round it lies', () => {
  const graph = new MultiUndirectedGraph();
  for (const id of ['service', 'e1', 'e2', 'e3', 'stub']) graph.addNode(id);
  graph.addUndirectedEdgeWithKey('r1', 'service', 'e1', { is: 'unknown' });
  graph.addUndirectedEdgeWithKey('r2', 'e1', 'e2', { is: 'unknown' });
  graph.addUndirectedEdgeWithKey('r3', 'e2', 'e3', { is: 'unknown' });
  graph.addUndirectedEdgeWithKey('r4', 'e3', 'service', { is: 'unknown' });
  graph.addUndirectedEdgeWithKey('s1', 'e2', 'stub', { is: 'unknown' });
  const ask = threeWay(graph, ['service']);
  for (const id of ['e1', 'e2', 'e3']) expect(ask(id).decidedBy).toEqual(['r1', 'r2', 'r3', 'r4']);
  expect(ask('stub').decidedBy).toEqual(['r1', 'r2', 'r3', 'r4', 's1']);
});

test('any target will do: an unknown tie between two targets decides nothing', () => {
  const ask = threeWay(yard(), ['service', 'clamp', 'rod2']);
  expect(ask('mast')).toEqual({ is: 'unknown', decidedBy: ['u2', 'u3'] });
  expect(ask('rod')).toEqual({ is: 'yes', decidedBy: [] });
});

test('without targets all are no; ids that the graph has not are refused', () => {
  expect(threeWay(yard(), [])('bar')).toEqual({ is: 'no', decidedBy: [] });
  expect(() => threeWay(yard(), ['nowhere'])).toThrow('no node nowhere');
  expect(() => threeWay(yard(), ['bar'])('nowhere')).toThrow('no node nowhere');
});
