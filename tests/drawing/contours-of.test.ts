import { describe, expect, it } from 'vitest';
import { contourLevels } from '../../src/drawing/contour-levels.ts';
import { contoursOf } from '../../src/drawing/contours-of.ts';

const grid = (columns: number, rows: number, stepM: number, share: (east: number, north: number) => number) => {
  const [westM, southM] = [-3, 2];
  const cells = Array.from({ length: columns * rows }, (_, i) =>
    share(westM + (i % columns) * stepM, southM + Math.floor(i / columns) * stepM),
  );
  return { westM, southM, stepM, columns, rows, share: cells };
};

describe('lines of equal level', () => {
  it('of a plane are exact: every point has the level, and the line runs from edge to edge', () => {
    const plane = (e: number, n: number) => 0.05 * e + 0.02 * n;
    const found = contoursOf(grid(9, 7, 0.5, plane), 0.1);
    expect(found).toHaveLength(1);
    for (const [e, n] of found[0]!) expect(plane(e, n)).toBeCloseTo(0.1, 12);
    const ends = [found[0]![0]!, found[0]!.at(-1)!];
    const onEdge = ([e, n]: readonly [number, number]) => [-3, 1].includes(e) || [2, 5].includes(n);
    expect(ends.every(onEdge)).toBe(true);
  });

  it('of a cone are circles: closed, round the tip, at the radius of the level', () => {
    const tip = [2.1, 6.3] as const;
    const cone = (e: number, n: number) => 1 - 0.2 * Math.hypot(e - tip[0], n - tip[1]);
    // 1 - 0.2 r = 0.5 at r = 2.5.
    const found = contoursOf(grid(41, 36, 0.25, cone), 0.5);
    expect(found).toHaveLength(1);
    const [circle] = found;
    expect(circle!.at(-1)).toEqual(circle![0]);
    const radii = circle!.map(([e, n]) => Math.hypot(e - tip[0], n - tip[1]));
    // Along a chord of one step s at radius r the cone sags by s²/8r: 3 mm here, and its line moves by no more than that.
    for (const r of radii) expect(Math.abs(r - 2.5)).toBeLessThan(0.25 ** 2 / (8 * 2.5) + 1e-9);
    const area = circle!.slice(1).reduce((sum, [e, n], i) => sum + circle![i]![0] * n - e * circle![i]![1], 0) / 2;
    expect(Math.abs(area)).toBeCloseTo(Math.PI * 2.5 ** 2, 1);
  });

  it('of two hills are two lines above their pass and one below it', () => {
    const hills = (e: number, n: number) =>
      Math.max(0, 1 - 0.4 * Math.hypot(e - 0.1, n - 6)) + Math.max(0, 1 - 0.4 * Math.hypot(e - 4.1, n - 6));
    // Midway, 2 m from either tip, they add up to 0.4.
    const at = (level: number) => contoursOf(grid(57, 45, 0.2, hills), level);
    expect(at(0.6)).toHaveLength(2);
    expect(at(0.2)).toHaveLength(1);
    for (const line of [...at(0.6), ...at(0.2)]) expect(line.at(-1)).toEqual(line[0]);
  });

  it.each([
    [0.4, 'the hollows are cut off'],
    [0.6, 'the tops are cut off'],
  ])('in a saddle at level %d: %s', (level) => {
    // Tops in the south-west and north-east corner, hollows in the others, mean 0.5.
    const saddle = { westM: 0, southM: 0, stepM: 1, columns: 2, rows: 2, share: [1, 0, 0, 1] };
    const found = contoursOf(saddle, level);
    expect(found).toHaveLength(2);
    const sums = found.map((line) => line.map(([e, n]) => e + n));
    // A line round the south-west top has e + n < 1, one round the north-east top > 1; round a hollow it has some of both.
    const isRoundTop = sums.map((s) => s.every((v) => v < 1) || s.every((v) => v > 1));
    expect(isRoundTop).toEqual(level > 0.5 ? [true, true] : [false, false]);
  });

  it('leave out squares with a corner that is not a number', () => {
    const holed = grid(5, 5, 1, (e, n) => (e === -1 && n === 4 ? Number.NaN : 0.1 * e));
    const found = contoursOf(holed, 0.1 * -1.5);
    expect(found).toHaveLength(2);
    for (const [e, n] of found.flat()) {
      expect(e).toBeCloseTo(-1.5, 9);
      expect(n <= 3 || n >= 5).toBe(true);
    }
  });

  it('are none where the level is not reached', () => {
    expect(
      contoursOf(
        grid(4, 4, 1, () => 0.3),
        0.5,
      ),
    ).toEqual([]);
  });
});

describe('levels', () => {
  it('are those between the least and the greatest, falling', () => {
    expect(contourLevels(grid(3, 1, 1, (e) => [0.12, 0.4, 0.65][e + 3]!))).toEqual([60, 50, 40, 30, 20, 15]);
  });

  it('of a surface that hardly changes are even ones between', () => {
    const levels = contourLevels(grid(2, 1, 1, (e) => (e === -3 ? 0.823 : 0.861)));
    expect(levels.length).toBeGreaterThanOrEqual(3);
    for (const l of levels) expect(l > 82.3 && l < 86.1).toBe(true);
    expect(levels).toEqual([86, 85, 84, 83]);
  });

  it('of a level surface are none', () => {
    expect(contourLevels(grid(3, 3, 1, () => 0.5))).toEqual([]);
  });
});
