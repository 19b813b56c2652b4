import { describe, expect, it } from 'vitest';
import { differenceV, flow } from '../../src/currents/flow.ts';
import { resistanceBetween, resistancesToEarth } from '../../src/currents/resistance.ts';
import { solveNetwork } from '../../src/currents/solve-network.ts';
import { network, oneAmpere, solve } from './networks.ts';

/** Worked out by hand with the rules of series and parallel resistances. */
describe('networks worked out by hand', () => {
  it('adds resistances in series', () => {
    const solved = solve(
      network(
        3,
        [
          [0, 1, 2],
          [1, 2, 3],
        ],
        [[2, 10]],
      ),
    );
    expect(resistancesToEarth(solved)).toEqual([15, 13, 10]);
    expect(resistanceBetween(solved, 0, 2)).toBe(5);
    expect(oneAmpere(solved, 0)).toMatchObject({ potentialV: [15, 13, 10], branchA: [1, 1], earthA: [1] });
  });

  it('shares a current between electrodes in parallel', () => {
    const solved = solve(
      network(
        2,
        [[0, 1, 0]],
        [
          [0, 30],
          [1, 60],
        ],
      ),
    );
    expect(resistancesToEarth(solved)).toEqual([20, 20]);
    const flowed = flow(solved, [{ node: 0, currentA: 9 }]);
    expect(flowed.earthA).toEqual([6, 3]);
    expect(flowed.branchA).toEqual([3]);
    expect(flowed.potentialV).toEqual([180, 180]);
  });

  it('adds up parallel branches between the same two nodes', () => {
    const solved = solve(
      network(
        2,
        [
          [0, 1, 2],
          [1, 0, 2],
          [0, 1, 1],
        ],
        [[1, 1]],
      ),
    );
    expect(resistanceBetween(solved, 0, 1)).toBeCloseTo(0.5, 15);
    expect(oneAmpere(solved, 0).branchA).toEqual([0.25, -0.25, 0.5]);
  });

  it('sends nothing through the middle of a balanced bridge', () => {
    const bridge = network(
      4,
      [
        [0, 1, 10],
        [0, 2, 20],
        [1, 3, 30],
        [2, 3, 60],
        [1, 2, 7],
      ],
      [[3, 5]],
    );
    const flowed = oneAmpere(solve(bridge), 0);
    expect(Math.abs(flowed.branchA[4]!)).toBeLessThan(1e-30);
    expect(flowed.branchA[0]).toBeCloseTo(2 / 3, 15);
    expect(resistancesToEarth(solve(bridge))[0]).toBeCloseTo(5 + 80 / 3, 13);
  });

  it('finds 5/6 ohm across the corners of a cube of ohms', () => {
    const edges = [0, 1, 2, 3, 4, 5, 6, 7].flatMap((a) =>
      [1, 2, 4].flatMap((bit) => ((a & bit) === 0 ? [[a, a | bit, 1] as const] : [])),
    );
    expect(resistanceBetween(solve(network(8, edges, [])), 0, 7)).toBeCloseTo(5 / 6, 15);
  });
});

describe('islands', () => {
  const islands = network(
    5,
    [
      [0, 1, 4],
      [2, 3, 6],
    ],
    [[0, 8]],
  );

  it('have no potential and no resistance to earth, and never NaN', () => {
    const solved = solve(islands);
    expect(resistancesToEarth(solved)).toEqual([8, 12, null, null, null]);
    const flowed = flow(solved, [
      { node: 1, currentA: 1 },
      { node: 2, currentA: 1 },
    ]);
    expect(flowed.potentialV).toEqual([8, 12, null, null, null]);
    expect(flowed.branchA).toEqual([-1, null]);
    expect(flowed.stranded).toEqual([2]);
    expect(flowed.residual).toBeLessThan(1e-15);
    expect(differenceV(solved, flowed, 2, 3)).toBeNull();
  });

  it('carry a current that is put in and taken out again', () => {
    const solved = solve(islands);
    const flowed = flow(solved, [
      { node: 2, currentA: 1 },
      { node: 3, currentA: -1 },
    ]);
    expect(flowed.branchA).toEqual([0, 1]);
    expect(flowed.potentialV).toEqual([0, 0, null, null, null]);
    expect(differenceV(solved, flowed, 2, 3)).toBe(6);
    expect(differenceV(solved, flowed, 0, 3)).toBeNull();
  });

  it('are joined to others by nothing, or by the soil where both have electrodes', () => {
    expect(resistanceBetween(solve(islands), 0, 2)).toBeNull();
    expect(resistanceBetween(solve(islands), 2, 3)).toBe(6);
    expect(resistanceBetween(solve(islands), 3, 4)).toBeNull();
    expect(
      resistanceBetween(
        solve(
          network(
            2,
            [],
            [
              [0, 8],
              [1, 9],
            ],
          ),
        ),
        0,
        1,
      ),
    ).toBe(17);
  });

  it('take Infinity for not there', () => {
    const solved = solve(
      network(
        2,
        [[0, 1, Infinity]],
        [
          [0, 8],
          [1, Infinity],
        ],
      ),
    );
    expect(resistancesToEarth(solved)).toEqual([8, null]);
    expect(oneAmpere(solved, 0)).toMatchObject({ branchA: [0], earthA: [1, 0] });
  });
});

describe('resistances of 0', () => {
  it('leave the sharing in a loop of them unknown and tell the rest by balance', () => {
    const loop = network(
      5,
      [
        [0, 1, 0],
        [1, 2, 0],
        [2, 0, 0],
        [2, 3, 0],
        [3, 4, 5],
        [4, 4, 0],
      ],
      [
        [3, 10],
        [4, 5],
      ],
    );
    const flowed = oneAmpere(solve(loop), 0);
    expect(flowed.branchA).toEqual([null, null, null, 1, 0.5, null]);
    expect(flowed.earthA).toEqual([0.5, 0.5]);
    expect(flowed.potentialV).toEqual([5, 5, 5, 5, 2.5]);
  });

  it('hold a node at remote earth', () => {
    const solved = solve(
      network(
        3,
        [
          [0, 1, 6],
          [1, 2, 0],
        ],
        [
          [1, 0],
          [0, 6],
        ],
      ),
    );
    expect(resistancesToEarth(solved)).toEqual([3, 0, 0]);
    expect(oneAmpere(solved, 0)).toMatchObject({ branchA: [0.5, 0], earthA: [0.5, 0.5], potentialV: [3, 0, 0] });
    expect(oneAmpere(solved, 2)).toMatchObject({ branchA: [0, -1], earthA: [1, 0], potentialV: [0, 0, 0] });
    expect(resistanceBetween(solved, 0, 2)).toBe(3);
  });

  it('share between two electrodes of 0 ohm as they like', () => {
    const solved = solve(
      network(
        2,
        [[0, 1, 0]],
        [
          [0, 0],
          [1, 0],
        ],
      ),
    );
    expect(oneAmpere(solved, 0)).toMatchObject({ branchA: [null], earthA: [null, null] });
  });
});

describe('electrodes that feel each other', () => {
  // Two electrodes with R1, R2, Rm: joined (R1 R2 - Rm^2) / (R1 + R2 - 2 Rm); from one to the other R1 + R2 - 2 Rm.
  const earth = {
    nodes: [0, 1],
    resistanceOhm: [
      [30, 4],
      [4, 50],
    ],
  };

  it('follow the two closed forms of circuit theory', () => {
    const apart = solve({ nodeCount: 2, branches: [], earth });
    expect(resistancesToEarth(apart)[0]).toBeCloseTo(30, 13);
    expect(resistancesToEarth(apart)[1]).toBeCloseTo(50, 13);
    expect(resistanceBetween(apart, 0, 1)).toBeCloseTo(72, 13);
    expect(oneAmpere(apart, 0).potentialV[1]).toBeCloseTo(4, 14);
    const joined = solve({ nodeCount: 2, branches: [{ from: 0, to: 1, resistanceOhm: 0 }], earth });
    expect(resistancesToEarth(joined)[0]).toBeCloseTo((30 * 50 - 16) / 72, 13);
    const { earthA, residual } = oneAmpere(joined, 0);
    expect(earthA[0]).toBeCloseTo(46 / 72, 15);
    expect(earthA[1]).toBeCloseTo(26 / 72, 15);
    expect(residual).toBeLessThan(1e-15);
  });

  it('are refused, two named, when nothing can be that near', () => {
    const near = {
      nodes: [0, 1, 2],
      resistanceOhm: [
        [30, 1, 0],
        [1, 9, 20],
        [0, 20, 40],
      ],
    };
    expect(solveNetwork({ nodeCount: 3, branches: [], earth: near })).toEqual({
      ok: false,
      reason: 'earth-not-positive-definite',
      electrodes: [1, 2],
    });
    const zero = {
      nodes: [0, 1],
      resistanceOhm: [
        [0, 1],
        [1, 9],
      ],
    };
    expect(solveNetwork({ nodeCount: 2, branches: [], earth: zero })).toMatchObject({ ok: false, electrodes: [0, 1] });
  });
});

describe('a network that makes no sense', () => {
  it.each([
    ['a node that is not there', network(2, [[0, 2, 1]], [])],
    ['a negative resistance', network(2, [[0, 1, -1]], [])],
    ['a resistance that is no number', network(2, [[0, 1, Number.NaN]], [])],
    [
      'a lopsided matrix',
      {
        nodeCount: 2,
        branches: [],
        earth: {
          nodes: [0, 1],
          resistanceOhm: [
            [3, 1],
            [2, 3],
          ],
        },
      },
    ],
  ])('is refused: %s', (_, of) => {
    expect(() => solveNetwork(of)).toThrow(RangeError);
  });
});
