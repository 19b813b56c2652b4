import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/electrodes/body.ts';
import type { SolvedBodies } from '../../src/electrodes/solve-bodies.ts';
import { extentOf, gridFrame, surfaceGrid } from '../../src/electrodes/surface-grid.ts';
import { bodyFrom, off, ring, run, solved } from './solved.ts';

const rod = (eastM: number, northM = 0): Body => ({ runs: [run([eastM, northM, 0], [eastM, northM, 3], 0.008)] });

const gridOf = (answer: SolvedBodies, bodyV: readonly number[], bodies: readonly number[]) =>
  surfaceGrid(answer, bodyV, gridFrame(answer.segments, bodies));

describe('a grid over the surface', () => {
  it('goes a third of the extent beyond the metal, at least 5 m, and has at most 33 points a side', () => {
    const small = gridOf(solved([rod(0)]), [1], [0]);
    expect([small.westM, small.southM, small.stepM, small.columns, small.rows]).toEqual([-5, -5, 10 / 32, 33, 33]);
    const long = gridOf(solved([{ runs: [run([0, 0, 0.5], [60, 30, 0.5], 0.004)] }]), [1], [0]);
    expect(long.westM).toBeCloseTo(-20, 9);
    expect(long.columns).toBe(33);
    expect(long.rows).toBeLessThan(33);
    expect(long.southM + (long.rows - 1) * long.stepM).toBeLessThanOrEqual(50 + 1e-9);
    expect(long.southM + long.rows * long.stepM).toBeGreaterThan(50 - 1e-9);
    expect(long.share).toHaveLength(long.columns * long.rows);
  });

  it('has row by row what a rod makes at each point: even in all four directions, references at 1 and 5 m', () => {
    const { share, columns, rows, stepM } = gridOf(solved([rod(0)]), [1], [0]);
    const at = (column: number, row: number): number => share[row * columns + column]!;
    const middle = (columns - 1) / 2;
    // V / V0 of a 3 m x 16 mm rod 5 m off: boundary elements worked out apart from this program
    for (const edge of [at(0, middle), at(columns - 1, middle), at(middle, 0), at(middle, rows - 1)]) {
      expect(off(edge, 0.0904)).toBeLessThan(0.002);
    }
    expect(stepM * 16).toBe(5);
    expect(at(middle + 3, middle)).toBeCloseTo(at(middle, middle - 3), 6);
  });

  it('lies round the bodies asked about, and feels all', () => {
    const answer = solved([rod(0), rod(40)]);
    const near = gridOf(answer, [1, 1], [0]);
    expect(near.westM).toBe(-5);
    const alone = gridOf(answer, [1, 0], [0]);
    near.share.forEach((share, k) => {
      const isOverRod = alone.share[k]! > 0.999;
      if (isOverRod) expect(share).toBeCloseTo(alone.share[k]!, 3);
      else expect(share).toBeGreaterThan(alone.share[k]!);
    });
  });

  it('of a ring turned by a quarter is the same', () => {
    const { share, columns } = gridOf(solved([bodyFrom(ring(10, 0.6, 0.004))]), [1], [0]);
    for (let row = 0; row < columns; row++) {
      for (let column = 0; column < row; column++) {
        expect(share[row * columns + column]).toBeCloseTo(share[column * columns + row]!, 6);
      }
    }
  });

  it('has no place round no body', () => {
    expect(() => extentOf(solved([rod(0)]).segments, [])).toThrow(RangeError);
  });
});
