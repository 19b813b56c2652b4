import { describe, expect, it } from 'vitest';
import type { RodsShape } from '../../src/electrodes/electrode.ts';
import { footM, inchM, rod, rods } from './shapes.ts';
import { off, ohmOfBody, ohmOfShape, run } from './solved.ts';

/** n times the resistance of the group over that of one rod. */
function factor(
  layout: RodsShape['layout'],
  count: number,
  lengths: number,
  lengthM: number,
  diameterM: number,
): number {
  const group = ohmOfShape(rods(count, layout, lengths * lengthM, lengthM, diameterM));
  return (count * group) / ohmOfShape(rod(lengthM, diameterM));
}

type Four = readonly [number, number, number, number];

/** Boundary elements worked out apart from this program, 12 to a rod of 10 ft x 5/8 in: 1, 2, 3 and 4 lengths apart. */
const solvedApart: readonly (readonly [RodsShape['layout'], number, Four])[] = [
  ['line', 2, [1.13, 1.074, 1.051, 1.039]],
  ['line', 3, [1.221, 1.124, 1.085, 1.065]],
  ['line', 4, [1.292, 1.162, 1.111, 1.084]],
  ['line', 5, [1.35, 1.193, 1.132, 1.1]],
  ['line', 6, [1.398, 1.218, 1.149, 1.113]],
  ['line', 8, [1.478, 1.26, 1.177, 1.134]],
  ['line', 10, [1.541, 1.293, 1.199, 1.151]],
  ['line', 12, [1.594, 1.32, 1.218, 1.165]],
  ['line', 16, [1.678, 1.363, 1.247, 1.187]],
  ['line', 20, [1.745, 1.397, 1.27, 1.204]],
  ['line', 24, [1.8, 1.425, 1.288, 1.218]],
  ['square', 4, [1.358, 1.202, 1.139, 1.105]],
  ['square', 8, [1.628, 1.343, 1.234, 1.177]],
  ['square', 12, [1.781, 1.42, 1.285, 1.216]],
  ['square', 16, [1.887, 1.472, 1.32, 1.242]],
  ['square', 20, [1.967, 1.512, 1.346, 1.261]],
  ['square', 24, [2.031, 1.543, 1.367, 1.277]],
  ['triangle', 3, [1.259, 1.148, 1.102, 1.078]],
  ['ring', 3, [1.259, 1.148, 1.102, 1.078]],
  ['ring', 4, [1.358, 1.202, 1.139, 1.105]],
  ['ring', 6, [1.5, 1.276, 1.189, 1.143]],
  ['ring', 8, [1.6, 1.326, 1.222, 1.168]],
  ['ring', 12, [1.738, 1.395, 1.268, 1.203]],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a solved factor
  ['ring', 16, [1.834, 1.443, 1.3, 1.226]],
  ['ring', 20, [1.907, 1.479, 1.324, 1.245]],
  ['ring', 24, [1.967, 1.509, 1.344, 1.259]],
];

describe('how much more than their share rods of a group have', () => {
  it.each(solvedApart)('%s of %d, 1 to 4 lengths apart, to 0.5 %%', (layout, count, factors) => {
    for (const [at, known] of factors.entries()) {
      expect(off(factor(layout, count, at + 1, 10 * footM, 0.625 * inchM), known)).toBeLessThan(0.005);
    }
  });

  // the same, one length apart: two in line, four and eight in a hollow square, by length over radius
  it.each([
    [50, 1.191, 1.528, 1.926],
    [100, 1.165, 1.455, 1.797],
    [400, 1.129, 1.356, 1.624],
    [1000, 1.113, 1.311, 1.546],
    [4000, 1.095, 1.262, 1.459],
  ])('depends on the slenderness: %d radii long', (radii, two, four, eight) => {
    const diameterM = 6 / radii;
    expect(off(factor('line', 2, 1, 3, diameterM), two)).toBeLessThan(0.005);
    expect(off(factor('square', 4, 1, 3, diameterM), four)).toBeLessThan(0.005);
    expect(off(factor('square', 8, 1, 3, diameterM), eight)).toBeLessThan(0.005);
  });
});

type Three = readonly [number, number, number];

/**
 * Use of rods of 3 m (1 / factor), 1, 2 and 3 lengths apart: boundary elements worked out apart from this program, for a radius
 * of 25 mm and of 8 mm; in print by a handbook (read), right to 3 % for pipes of 50 mm (row of 20 one length apart: 8 %).
 */
const use: readonly (readonly ['line' | 'ring', number, Three, Three, Three])[] = [
  ['line', 2, [0.85, 0.91, 0.94], [0.863, 0.917, 0.941], [0.885, 0.931, 0.951]],
  ['line', 4, [0.73, 0.83, 0.89], [0.737, 0.834, 0.88], [0.773, 0.86, 0.9]],
  ['line', 6, [0.65, 0.77, 0.85], [0.672, 0.789, 0.845], [0.714, 0.82, 0.87]],
  ['line', 10, [0.59, 0.74, 0.81], [0.602, 0.736, 0.803], [0.648, 0.773, 0.833]],
  ['line', 20, [0.48, 0.67, 0.76], [0.523, 0.672, 0.751], [0.572, 0.715, 0.787]],
  ['ring', 4, [0.69, 0.78, 0.85], [0.695, 0.802, 0.854], [0.736, 0.832, 0.878]],
  ['ring', 6, [0.61, 0.73, 0.8], [0.62, 0.747, 0.812], [0.666, 0.783, 0.841]],
  ['ring', 10, [0.56, 0.68, 0.76], [0.547, 0.691, 0.767], [0.596, 0.732, 0.801]],
  ['ring', 20, [0.47, 0.63, 0.71], [0.473, 0.629, 0.715], [0.523, 0.675, 0.754]],
  ['ring', 40, [0.41, 0.58, 0.66], [0.419, 0.579, 0.671], [0.468, 0.628, 0.714]],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a solved figure
  ['ring', 60, [0.39, 0.55, 0.64], [0.392, 0.554, 0.648], [0.441, 0.603, 0.693]],
];

describe('use of rods in a group', () => {
  it.each(use)('%s of %d', (layout, count, printed, pipes, slender) => {
    for (const at of [0, 1, 2] as const) {
      const thick = 1 / factor(layout, count, at + 1, 3, 0.05);
      expect(off(thick, pipes[at])).toBeLessThan(0.005);
      expect(off(1 / factor(layout, count, at + 1, 3, 0.016), slender[at])).toBeLessThan(0.005);
      expect(off(printed[at], thick)).toBeLessThan(count === 20 && layout === 'line' && at === 0 ? 0.085 : 0.035);
    }
  });
});

describe('groups in print', () => {
  // MIL-HDBK-419A volume I, page 2-27 (read): K = 2.8, of points that give off alike; boundary elements apart: 2.594
  it('5 x 5 rods one length apart have 2.594 times their share', () => {
    const [lengthM, diameterM] = [10 * footM, 0.625 * inchM];
    const runs = Array.from({ length: 25 }, (_, at) => {
      const [eastM, northM] = [(at % 5) * lengthM, Math.floor(at / 5) * lengthM];
      return run([eastM, northM, 0], [eastM, northM, lengthM], diameterM / 2);
    });
    expect(off((25 * ohmOfBody({ runs })) / ohmOfShape(rod(lengthM, diameterM)), 2.594)).toBeLessThan(0.005);
  });

  // MIL-HDBK-419A volume II, 1.2.2.2 (read): 1.76 ohm, which is that of a straight line; boundary elements apart: 1.938, 1.782
  it('26 rods of 3/4 in x 10 ft at 20 ft round 100 x 160 ft, and in one line', () => {
    const places = Array.from({ length: 26 }, (_, at) => round(20 * at));
    const runs = places.map(([x, y]) =>
      run([x * footM, y * footM, 0], [x * footM, y * footM, 10 * footM], 0.375 * inchM),
    );
    expect(off(ohmOfBody({ runs }), 1.938)).toBeLessThan(0.005);
    const line = ohmOfShape(rods(26, 'line', 20 * footM, 10 * footM, 0.75 * inchM));
    expect(off(line, 1.782)).toBeLessThan(0.005);
    expect(off(1.76, line)).toBeLessThan(0.016);
  });
});

/** A point so many feet along the rectangle. */
function round(walkedFt: number): readonly [number, number] {
  if (walkedFt < 160) return [walkedFt, 0];
  if (walkedFt < 260) return [160, walkedFt - 160];
  return walkedFt < 420 ? [420 - walkedFt, 100] : [0, 520 - walkedFt];
}
