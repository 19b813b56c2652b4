import { expect, test } from 'vitest';
import { disjointWays, disjointWaysIn } from '../../src/bonding/disjoint-ways.ts';
import { graphOf } from '../reference/random-multigraph.ts';

/** Two wires from mast to bar and two from bar to service; one more straight from mast to service; a lone rod. */
const yard = graphOf({
  nodes: ['mast', 'bar', 'service', 'rod'],
  edges: [
    ['c1', 'mast', 'bar', null],
    ['c2', 'mast', 'bar', null],
    ['c3', 'bar', 'service', null],
    ['c4', 'service', 'bar', null],
    ['c5', 'mast', 'service', null],
  ],
});
const all = { breakableNode: () => true };
const none = { breakableNode: () => false };

test('ways may meet on a bar that does not break, not on one that does, and strictly never', () => {
  expect(disjointWays(yard, 'mast', 'service', none)).toEqual({ separate: 3, strict: 2 });
  expect(disjointWays(yard, 'mast', 'service', all)).toEqual({ separate: 2, strict: 2 });
});

test('each direct bond is a way, even strictly; the ends do not count as shared', () => {
  expect(disjointWays(yard, 'bar', 'service', all)).toEqual({ separate: 3, strict: 3 });
});

test('counting stops at the bound; a choice of edges or nodes holds', () => {
  expect(disjointWays(yard, 'mast', 'service', { ...none, bound: 1 })).toEqual({ separate: 1, strict: 1 });
  expect(disjointWays(yard, 'mast', 'service', { ...none, edge: (key) => key !== 'c5' })).toEqual({
    separate: 2,
    strict: 1,
  });
  expect(disjointWays(yard, 'mast', 'service', { ...none, node: (id) => id !== 'mast' })).toEqual({
    separate: 0,
    strict: 0,
  });
});

test('none where there is none; an end to itself and unknown ids are refused', () => {
  const ways = disjointWaysIn(yard, all);
  expect(ways('mast', 'rod')).toEqual({ separate: 0, strict: 0 });
  expect(ways('mast', 'service')).toEqual(ways('service', 'mast'));
  expect(() => ways('mast', 'mast')).toThrow(RangeError);
  expect(() => ways('mast', 'nowhere')).toThrow('no node nowhere');
});
