import { describe, expect, it } from 'vitest';
import type { Body, Run } from '../../src/electrodes/body.ts';
import type { SolvedBodies } from '../../src/electrodes/solve-bodies.ts';
import { transferredShare } from '../../src/electrodes/transferred.ts';
import { layered, off, run, solved, uniform } from './solved.ts';

const rod = (eastM: number, lengthM: number, diameterM: number): Body => ({
  runs: [run([eastM, 0, 0], [eastM, 0, lengthM], diameterM / 2)],
});

/** 3 m square ring at 0.6 m, four rods of 2.44 m from its corners down; its middle at the origin. */
const ringWithRods: Body = (() => {
  const corners = [
    [-1.5, -1.5],
    [1.5, -1.5],
    [1.5, 1.5],
    [-1.5, 1.5],
  ] as const;
  const sides = corners.map((from, k): Run => {
    const to = corners[(k + 1) % 4]!;
    return run([...from, 0.6], [...to, 0.6], 0.004);
  });
  return { runs: [...sides, ...corners.map((at) => run([...at, 0.6], [...at, 3.04], 0.008))] };
})();

const mutual = (answer: SolvedBodies): number => answer.resistanceOhm[1]!;
const joined = ({ resistanceOhm }: SolvedBodies): number => {
  const [a, m, , b] = resistanceOhm as unknown as [number, number, number, number];
  return (a * b - m * m) / (a + b - 2 * m);
};

describe('what an unbonded electrode takes on', () => {
  // Ring with rods and a flush rod of 3 m x 16 mm, 100 ohm m: boundary elements worked out apart from this program
  it.each([
    [5, 2.9523, 8.4215],
    [10, 1.5604, 7.9929],
    [20, 0.7918, 7.7396],
    [50, 0.3181, 7.5786],
  ])('a rod %d m from a ring with rods: %d ohm mutual, %d joined', (distanceM, ohm, both) => {
    const answer = solved([ringWithRods, rod(distanceM, 3, 0.016)]);
    expect(off(mutual(answer), ohm)).toBeLessThan(0.005);
    expect(off(joined(answer), both)).toBeLessThan(0.005);
    const own = answer.resistanceOhm[0]!;
    expect(transferredShare(answer, [0], 1)).toBeCloseTo(mutual(answer) / own, 12);
  });

  // Two rods of 10 m x 20 mm, 100 ohm m: boundary elements worked out apart from this program (and a numerical program's print)
  it.each([
    [0.5, 5.3434, 5.353],
    [1, 4.2894, 4.2929],
    [2, 3.2785, 3.2794],
    [5, 2.0639, 2.0737],
    [10, 1.3029, 1.3027],
    [100, 0.1586, 0.1586],
  ])('two rods of 10 m, %d m apart: %d ohm mutual', (distanceM, ohm, printed) => {
    const ours = mutual(solved([rod(0, 10, 0.02), rod(distanceM, 10, 0.02)]));
    expect(off(ours, ohm)).toBeLessThan(0.001);
    expect(off(ours, printed)).toBeLessThan(0.006);
  });

  it('is the whole within a group, less outside, and nothing far away', () => {
    const answer = solved([rod(0, 3, 0.016), rod(4, 3, 0.016), rod(8, 3, 0.016), rod(5000, 3, 0.016)]);
    expect(transferredShare(answer, [0, 1], 0)).toBeCloseTo(1, 12);
    expect(transferredShare(answer, [0, 1], 1)).toBeCloseTo(1, 12);
    const near = transferredShare(answer, [0, 1], 2)!;
    expect(near).toBeGreaterThan(transferredShare(answer, [0], 2)!);
    expect(near).toBeLessThan(1);
    expect(transferredShare(answer, [0, 1, 2], 3)).toBeLessThan(1e-3);
  });

  it('of a group is that of the same metal as one body', () => {
    const same = { cutting: () => 8, errorShare: 1 };
    const [a, b, outside] = [rod(0, 3, 0.016), rod(2, 2, 0.016), rod(6, 3, 0.016)];
    for (const soil of [uniform, layered([1000, 80], [0.8])]) {
      const apart = solved([a, b, outside], soil, same);
      const one = solved([{ runs: [...a.runs, ...b.runs] }, outside], soil, same);
      expect(transferredShare(apart, [0, 1], 2)).toBeCloseTo(transferredShare(one, [0], 1)!, 10);
    }
  });

  it('does not depend on the resistivity of one soil, and falls over better soil', () => {
    const share = (ohmM: readonly number[], thickM: readonly number[] = []) =>
      transferredShare(solved([rod(0, 3, 0.016), rod(6, 3, 0.016)], layered(ohmM, thickM)), [0], 1)!;
    expect(share([20])).toBeCloseTo(share([3000]), 12);
    expect(share([300, 20], [1])).toBeLessThan(share([300]));
    expect(share([20, 300], [4])).toBeGreaterThan(share([20]));
  });
});
