import { MultiUndirectedGraph } from 'graphology';
import { expect, test } from 'vitest';
import { components } from '../../src/bonding/components.ts';
import { cutPoints, lossesFrom } from '../../src/bonding/cut-points.ts';
import { threeWay } from '../../src/bonding/three-way.ts';
import { graphOf } from '../reference/random-multigraph.ts';

/** service - bar = clamp - rod, with two bonds between bar and clamp, and a ring of wire on the rod. */
const yard = graphOf({
  nodes: ['service', 'bar', 'clamp', 'rod', 'apart'],
  edges: [
    ['c1', 'service', 'bar', null],
    ['c2', 'bar', 'clamp', null],
    ['c3', 'clamp', 'bar', null],
    ['c4', 'clamp', 'rod', null],
    ['loop', 'rod', 'rod', null],
  ],
});

test('a doubled bond is no cut edge, its clamp still is a cut vertex; a ring on one node is neither', () => {
  expect(cutPoints(yard)).toEqual({ edges: ['c1', 'c4'], nodes: ['bar', 'clamp'] });
  expect(components(yard)).toEqual([['apart'], ['bar', 'clamp', 'rod', 'service']]);
});

test('each loss names what hangs on it; the only root takes all along, a second root ends that', () => {
  const told = (roots: string[]) => lossesFrom(yard, roots).map(({ at, of, lost }) => [of, at, ...lost()]);
  expect(told(['service'])).toEqual([
    ['node', 'bar', 'clamp', 'rod'],
    ['node', 'clamp', 'rod'],
    ['node', 'service', 'bar', 'clamp', 'rod'],
    ['edge', 'c1', 'bar', 'clamp', 'rod'],
    ['edge', 'c4', 'rod'],
  ]);
  expect(told(['service', 'rod', 'rod'])).toEqual([]);
  expect(told([])).toEqual([]);
});

test('a root that the graph has not is refused, one that is left out by choice does not count', () => {
  expect(() => lossesFrom(yard, ['nowhere'])).toThrow('no node nowhere');
  expect(lossesFrom(yard, ['service'], { node: (id) => id !== 'service' })).toEqual([]);
});

test('a chain of 100 000 joints ends no stack, and what is not listed costs nothing', () => {
  const chain = new MultiUndirectedGraph();
  const last = 99_999;
  for (let i = 0; i <= last; i++) chain.addNode(`j${i}`);
  for (let i = 0; i < last; i++) chain.addUndirectedEdgeWithKey(`w${i}`, `j${i}`, `j${i + 1}`, { is: 'unknown' });
  const cut = cutPoints(chain);
  expect([cut.edges.length, cut.nodes.length]).toEqual([last, last - 1]);
  const losses = lossesFrom(chain, ['j0']);
  // Node j<i> takes along all behind it: as many as the edge in front of it does, less one.
  expect(losses.find(({ at }) => at === 'j40')!.count).toBe(last - 40);
  expect(losses.find(({ at }) => at === `w${last - 2}`)!.lost()).toEqual([`j${last - 1}`, `j${last}`]);
  expect(threeWay(chain, ['j0'])(`j${last}`).decidedBy).toHaveLength(last);
});
