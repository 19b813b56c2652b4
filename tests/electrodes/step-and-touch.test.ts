import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/electrodes/body.ts';
import type { SolvedBodies } from '../../src/electrodes/solve-bodies.ts';
import { eastEndOf, stepLine, touchShares } from '../../src/electrodes/step-and-touch.ts';
import { bodyFrom, off, ring, run, solved, uniform } from './solved.ts';

const rod = (eastM: number, lengthM = 3): Body => ({ runs: [run([eastM, 0, 0], [eastM, 0, lengthM], 0.008)] });
/** V / V0 round a rod of 3 m x 16 mm: boundary elements worked out apart from this program. */
const round = { 1: 0.283, 2: 0.188, 3: 0.1394 } as const;

describe('steps along a line', () => {
  const answer = solved([rod(0)]);

  it('the worst one begins at the rod and is what a pace falls', () => {
    const { step, points, fromM, toM } = stepLine(answer, [1], [0, 0], [0, 1], 10);
    expect(step.atM).toBe(0);
    expect(off(step.share, 1 - round[1])).toBeLessThan(0.002);
    expect(points).toHaveLength(41);
    expect(points[12]!.distanceM).toBe(3);
    expect(off(points[12]!.share, round[3])).toBeLessThan(0.002);
    expect([fromM, toM]).toEqual([
      [0, 0],
      [0, 10],
    ]);
  });

  it('away from the rod it is what the references differ by', () => {
    expect(off(stepLine(answer, [1], [1, 0], [1, 0], 5).step.share, round[1] - round[2])).toBeLessThan(0.005);
  });

  it('on a line past a rod it lies on both sides of it alike, the first one told', () => {
    const { step, points } = stepLine(answer, [1], [-4, 1], [1, 0], 8);
    const mirrored = [...points].reverse();
    points.forEach(({ share }, k) => {
      expect(share).toBeCloseTo(mirrored[k]!.share, 6);
    });
    expect(step.atM).toBeLessThan(4);
  });

  it('a line shorter than a pace has none', () => {
    expect(stepLine(answer, [1], [0, 0], [1, 0], 0.5).step).toEqual({ share: 0, atM: 0 });
  });
});

describe('touch', () => {
  const touchShare = (answer: SolvedBodies, bodyV: readonly number[], metalV: number, at: readonly [number, number]) =>
    touchShares(answer, bodyV, metalV, [at])[0]!;

  it('of several places at once is that of each', () => {
    const answer = solved([rod(0)]);
    const places = [
      [0, 0],
      [2, 1],
      [5, 0],
    ] as const;
    expect(touchShares(answer, [1], 1, places)).toEqual(places.map((at) => touchShare(answer, [1], 1, at)));
    expect(touchShares(answer, [1], 1, [])).toEqual([]);
  });

  it('of a lone rod: what the ground an arm away is below it', () => {
    expect(off(touchShare(solved([rod(0)]), [1], 1, [0, 0]), 1 - round[1])).toBeLessThan(0.002);
  });

  it('within a ring it is far less than outside of one', () => {
    const ringed = solved([bodyFrom(ring(6, 0.5, 0.004))]);
    const inside = touchShare(ringed, [1], 1, [0, 0]);
    expect(inside).toBeLessThan(touchShare(ringed, [1], 1, [6, 0]));
    expect(inside).toBeLessThan(touchShare(solved([rod(0)]), [1], 1, [0, 0]));
  });

  it('counts metal that is lower than the ground as well', () => {
    const two = solved([rod(0), rod(3)], uniform);
    expect(touchShare(two, [1, 0], 0, [3, 0])).toBeGreaterThan(0.1);
  });
});

describe('where metal ends in the east', () => {
  it('is the end of a run, of the bodies asked about alone', () => {
    const answer = solved([{ runs: [run([0, 0, 0.5], [6, 2, 0.5], 0.004)] }, rod(20)]);
    const [east, north] = eastEndOf(answer.segments, [0]);
    expect(east).toBeCloseTo(6, 9);
    expect(north).toBeCloseTo(2, 9);
    expect(eastEndOf(answer.segments, [0, 1])[0]).toBeCloseTo(20, 9);
  });
});
