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
