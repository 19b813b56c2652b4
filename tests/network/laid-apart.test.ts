import { expect, it } from 'vitest';
import { laidApart } from '../../src/network/laid-apart.ts';
import { inductanceMatrix } from '../../src/surge/inductance-matrix.ts';
import { tightestPair } from '../../src/surge/tightest-pair.ts';

const wire = (from: [number, number, number], to: [number, number, number], radiusM = 2e-3) => ({ from, to, radiusM });

it('moves wires along one line two diameters apart from each other, and leaves the first', () => {
  const three = [0, 1, 2].map(() => wire([0, 0, -0.5], [10, 0, -0.5]));
  const { pieces, moved } = laidApart(three);
  expect(moved).toEqual([1, 2]);
  expect(pieces.map((p) => p.from[1])).toEqual([0, 8e-3, 16e-3]);
  expect(pieces.map((p) => p.to[2])).toEqual([-0.5, -0.5, -0.5]);
  expect(tightestPair(inductanceMatrix(three), 3)).not.toBeNull();
  expect(tightestPair(inductanceMatrix(pieces), 3)).toBeNull();
});

it('leaves pieces of one run, what only meets end to end, what lies apart, and a cable in a tower', () => {
  const run = [wire([0, 0, 0], [1, 0, 0]), wire([1, 0, 0], [2, 0, 0])];
  expect(laidApart(run).moved).toEqual([]);
  expect(laidApart([wire([0, 0, 0], [1, 0, 0]), wire([0, 0.005, 0], [1, 0.005, 0])]).moved).toEqual([]);
  expect(laidApart([wire([0, 0, 0], [0, 0, 9], 0.12), wire([0, 0, 1], [0, 0, 8], 5e-3)]).moved).toEqual([]);
});

it('moves an upright one to the east, and one that runs the other way too', () => {
  const { pieces, moved } = laidApart([wire([0, 0, 0], [0, 0, 3]), wire([0, 0, 2], [0, 0, 1])]);
  expect(moved).toEqual([1]);
  expect(pieces[1]!.from).toEqual([8e-3, 0, 2]);
});

it('moves one that runs back over itself, and none onto what lies there already', () => {
  const hairpin = [wire([0, 0, 0], [5, 0, 0]), wire([5, 0, 0], [0, 0, 0])];
  expect(laidApart(hairpin).moved).toEqual([1]);
  const taken = [wire([0, 0, 0], [5, 0, 0]), wire([0, 8e-3, 0], [5, 8e-3, 0]), wire([0, 0, 0], [5, 0, 0])];
  const { pieces, moved } = laidApart(taken);
  expect(moved).toEqual([2]);
  expect(pieces[2]!.from[1]).toBe(16e-3);
});
