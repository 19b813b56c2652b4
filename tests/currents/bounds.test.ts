import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boundsBetween,
  boundsToEarth,
  type RangedNetwork,
  type SolvedRange,
  solveRange,
} from '../../src/currents/bounds.ts';
import type { Network } from '../../src/currents/network.ts';
import { resistanceBetween, resistancesToEarth } from '../../src/currents/resistance.ts';
import { solve } from './networks.ts';

function ranged(of: RangedNetwork): SolvedRange {
  const solved = solveRange(of);
  if (!solved.ok) throw new Error(solved.reason);
  return solved;
}

const earth = { nodes: [1], lowOhm: [20], nominalOhm: [25], highOhm: [40] };

describe('bounds of a network known in ranges', () => {
  it('are those of series and parallel by hand', () => {
    const network: RangedNetwork = {
      nodeCount: 2,
      branches: [{ from: 0, to: 1, resistanceOhm: { low: 1, high: 4 }, nominalOhm: 2 }],
      earth,
    };
    expect(boundsToEarth(ranged(network))).toEqual([
      { low: 21, value: 27, high: 44 },
      { low: 20, value: 25, high: 40 },
    ]);
    expect(boundsBetween(ranged(network), 0, 1)).toEqual({ low: 1, value: 2, high: 4 });
  });

  it('are open where a branch may not be there, and have no value where none is named', () => {
    const branches = [{ from: 0, to: 1, resistanceOhm: { low: 0, high: Infinity }, nominalOhm: null }];
    const solved = ranged({ nodeCount: 2, branches, earth });
    expect(boundsToEarth(solved)[0]).toEqual({ low: 20, value: null, high: Infinity });
    expect(boundsBetween(solved, 0, 1)).toEqual({ low: 0, value: null, high: Infinity });
  });

  it('say Infinity, not unknown, for a way that is not there in any case', () => {
    const solved = ranged({ nodeCount: 2, branches: [], earth });
    expect(boundsToEarth(solved)[0]).toEqual({ low: Infinity, value: Infinity, high: Infinity });
  });

  it('leave out an electrode that may not be there, whatever it would feel of the others', () => {
    const coupled: RangedNetwork = {
      nodeCount: 2,
      branches: [],
      earth: {
        nodes: [0, 1],
        lowOhm: [
          [10, 2],
          [2, 10],
        ],
        highOhm: [
          [12, Infinity],
          [Infinity, Infinity],
        ],
        nominalOhm: null,
      },
    };
    expect(boundsToEarth(ranged(coupled))).toEqual([
      { low: expect.closeTo(10, 12), value: null, high: 12 },
      { low: expect.closeTo(10, 12), value: null, high: Infinity },
    ]);
  });

  it('are refused where the soil ranges are not ordered', () => {
    // each resistance rises, but from one electrode to the other 10 + 10 - 0 = 20 falls to 11 + 11 - 2 * 9 = 4
    const lowOhm = [
      [10, 0],
      [0, 10],
    ];
    const highOhm = [
      [11, 9],
      [9, 11],
    ];
    const crossed = { nodeCount: 2, branches: [], earth: { nodes: [0, 1], lowOhm, highOhm, nominalOhm: null } };
    expect(solveRange(crossed)).toEqual({ ok: false, reason: 'earth-range-not-ordered' });
    const scaled = {
      ...crossed.earth,
      lowOhm: [
        [10, 4],
        [4, 10],
      ],
      highOhm: [
        [20, 8],
        [8, 20],
      ],
    };
    expect(solveRange({ ...crossed, earth: scaled })).toMatchObject({ ok: true });
    expect(solveRange({ ...crossed, earth: { ...earth, lowOhm: [41] } })).toMatchObject({ ok: false });
  });
});

const nodeCount = 7;
const node = fc.nat(nodeCount - 1);
const logs = fc.double({ min: Math.log(1e-4), max: Math.log(1e4), noNaN: true });
const ohms = fc.tuple(logs, logs, fc.double({ min: 0, max: 1, noNaN: true })).map(([a, b, share]) => ({
  low: Math.exp(Math.min(a, b)),
  high: Math.exp(Math.max(a, b)),
  inside: Math.exp(Math.min(a, b) + share * Math.abs(a - b)),
}));

describe('every network in between', () => {
  it('has its resistances within the bounds', () => {
    const branches = fc.array(fc.record({ from: node, to: node, ohm: ohms }), { minLength: 4, maxLength: 14 });
    const electrodes = fc.array(fc.tuple(node, ohms), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(branches, electrodes, node, node, (branchList, electrodeList, a, b) => {
        const nodes = electrodeList.map(([at]) => at);
        const solved = ranged({
          nodeCount,
          branches: branchList.map(({ from, to, ohm }) => ({ from, to, resistanceOhm: ohm, nominalOhm: ohm.inside })),
          earth: {
            nodes,
            lowOhm: electrodeList.map(([, ohm]) => ohm.low),
            highOhm: electrodeList.map(([, ohm]) => ohm.high),
            nominalOhm: electrodeList.map(([, ohm]) => ohm.inside),
          },
        });
        const between: Network = {
          nodeCount,
          branches: branchList.map(({ from, to, ohm }) => ({ from, to, resistanceOhm: ohm.inside })),
          earth: { nodes, resistanceOhm: electrodeList.map(([, ohm]) => ohm.inside) },
        };
        const own = resistanceBetween(solve(between), a, b) ?? Infinity;
        const bound = boundsBetween(solved, a, b);
        expect(bound.value).toBe(own);
        expect(bound.low).toBeLessThanOrEqual(own * (1 + 1e-15));
        expect(bound.high).toBeGreaterThanOrEqual(own * (1 - 1e-15));
        const toEarth = resistancesToEarth(solve(between))[a] ?? Infinity;
        expect(boundsToEarth(solved)[a]!.low).toBeLessThanOrEqual(toEarth * (1 + 1e-15));
        expect(boundsToEarth(solved)[a]!.high).toBeGreaterThanOrEqual(toEarth * (1 - 1e-15));
      }),
    );
  });
});
