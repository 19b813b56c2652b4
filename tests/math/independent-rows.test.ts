import { expect, it } from 'vitest';
import { independentRows } from '../../src/math/independent-rows.ts';

const rows = (...lists: number[][]) => lists.map((list) => Float64Array.from(list));

it('leaves out what follows from the others, zeros, and nothing else', () => {
  expect(independentRows(rows([1, 0, 0], [0, 1, 0], [0, 0, 1]), 1e-9)).toEqual([0, 1, 2]);
  expect(independentRows(rows([1, 2, 0], [0, 0, 0], [-2, -4, 0]), 1e-9)).toHaveLength(1);
  expect(independentRows(rows([1, 1, 0], [1, -1, 0], [3, 5, 0]), 1e-9)).toHaveLength(2);
  expect(independentRows(rows([1, 0], [1, 1e-6]), 1e-9)).toEqual([0, 1]);
  expect(independentRows([], 1e-9)).toEqual([]);
});
