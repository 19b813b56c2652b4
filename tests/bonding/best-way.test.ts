import { MultiUndirectedGraph } from 'graphology';
import { expect, test } from 'vitest';
import { bestWays } from '../../src/bonding/best-way.ts';
import { graphOf } from '../reference/random-multigraph.ts';

const yard = graphOf({
  nodes: ['mast', 'bar', 'clamp', 'rod', 'apart'],
  edges: [
    ['long', 'mast', 'bar', 9],
    ['short', 'mast', 'bar', 2],
    ['longer', 'mast', 'bar', 12],
    ['untaped', 'mast', 'rod', null],
    ['to-clamp', 'bar', 'clamp', 1],
    ['to-rod', 'clamp', 'rod', 40],
  ],
});

test('the shortest of parallel bonds is listed, and an unknown length comes after any known one', () => {
  expect(bestWays(yard, ['rod'])('mast')).toEqual({
    nodes: ['mast', 'bar', 'clamp', 'rod'],
    edges: ['short', 'to-clamp', 'to-rod'],
    unknownLengths: 0,
    lengthAtLeastM: 43,
  });
});

test('what may not be passed may still be an end; then the unknown length is the only way', () => {
  const way = bestWays(yard, ['rod'], { passes: (id) => id !== 'clamp' });
  expect(way('mast')).toEqual({ nodes: ['mast', 'rod'], edges: ['untaped'], unknownLengths: 1, lengthAtLeastM: 0 });
  expect(way('clamp')?.edges).toEqual(['to-rod']);
});

test('a target is its own way; an island has none; an id that the graph has not is refused', () => {
  const way = bestWays(yard, ['rod', 'bar']);
  expect(way('bar')).toEqual({ nodes: ['bar'], edges: [], unknownLengths: 0, lengthAtLeastM: 0 });
  expect(way('apart')).toBeNull();
  expect(() => way('nowhere')).toThrow('no node nowhere');
  expect(() => bestWays(yard, ['nowhere'])).toThrow('no node nowhere');
});

test('lengths that are equal on the tape are equal: the ids decide, not the last bit', () => {
  // 0.1 + 0.2 is not 0.3 in floating point. Both ways have two pieces; only the name of the second one's joint changes.
  const twoWays = (other: string) =>
    graphOf({
      nodes: ['a', 'm', other, 'z'],
      edges: [
        ['e1', 'a', 'm', 0.1],
        ['e2', 'm', 'z', 0.2],
        ['e3', 'a', other, 0.3],
        ['e4', other, 'z', 0],
      ],
    });
  expect(bestWays(twoWays('k'), ['z'])('a')?.nodes).toEqual(['a', 'k', 'z']);
  expect(bestWays(twoWays('p'), ['z'])('a')?.nodes).toEqual(['a', 'm', 'z']);
});

test.each([
  ['left out', {}],
  ['not a number', { lengthM: { low: Number.NaN, high: 1 } }],
  ['negative', { lengthM: { low: -1, high: 1 } }],
  ['without end', { lengthM: { low: Infinity, high: Infinity } }],
  ['a bare number', { lengthM: 3 }],
])('a length that is %s is refused, never taken as 1', (_what, tie) => {
  const graph = new MultiUndirectedGraph();
  graph.addNode('a');
  graph.addNode('b');
  graph.addUndirectedEdgeWithKey('c1', 'a', 'b', tie);
  expect(() => bestWays(graph, ['a'])).toThrow('edge c1 has no usable lengthM');
});
