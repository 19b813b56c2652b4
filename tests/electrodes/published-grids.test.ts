import { describe, expect, it } from 'vitest';
import type { Body, Run, SoilPoint } from '../../src/electrodes/body.ts';
import { layered, off, ohmOfBody, run } from './solved.ts';

const depthM = 0.5;

/** Wires between neighbours of a lattice of points, where both are in the grid. */
function mesh(pitchM: number, steps: number, isIn: (x: number, y: number) => boolean, at: number, a: number): Run[] {
  const point = (i: number, j: number): SoilPoint => [i * pitchM, j * pitchM, at];
  const runs: Run[] = [];
  for (let i = 0; i <= steps; i++) {
    for (let j = 0; j <= steps; j++) {
      if (isIn(i, j) && isIn(i + 1, j) && isIn(i + 0.5, j)) runs.push(run(point(i, j), point(i + 1, j), a));
      if (isIn(i, j) && isIn(i, j + 1) && isIn(i, j + 0.5)) runs.push(run(point(i, j), point(i, j + 1), a));
    }
  }
  return runs;
}

const square = (sideM: number, meshes: number, at: number, a: number): Body => ({
  runs: mesh(sideM / meshes, meshes, (i, j) => i <= meshes && j <= meshes, at, a),
});

function lengthOf({ runs }: Body): number {
  return runs.reduce((sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]), 0);
}

/** IEEE Std 80 annex B, grids as reconstructed from length and area (recalled); boundary elements worked out apart. */
describe('grids of the standard, 400 ohm metre, to 2 %', () => {
  const soil = layered([400], []);

  it('70 x 70 m of 11 x 11 lines: 2.67 ohm by the computer of the standard, 2.648 apart', () => {
    const grid = square(70, 10, depthM, 0.005);
    expect(lengthOf(grid)).toBeCloseTo(1540, 9);
    const ohm = ohmOfBody(grid, soil);
    expect(off(ohm, 2.648)).toBeLessThan(0.02);
    expect(off(ohm, 2.67)).toBeLessThan(0.02);
  });

  it('an L of 70 x 105 m less 35 x 70 m with 24 rods of 7.5 m: 2.34 ohm by that computer, 2.329 apart', () => {
    const isIn = (i: number, j: number): boolean => i >= 0 && j >= 0 && i <= 10 && j <= 15 && (i <= 5 || j <= 5);
    const runs = mesh(7, 15, isIn, depthM, 0.005);
    expect(lengthOf({ runs })).toBeCloseTo(1575, 9);
    const places = alongEdge();
    const rods = Array.from({ length: 24 }, (_, k) => {
      const [x, y] = places[Math.round((k * places.length) / 24)]!;
      return run([x, y, depthM], [x, y, depthM + 7.5], 0.005);
    });
    const ohm = ohmOfBody({ runs: [...runs, ...rods] }, soil);
    expect(off(ohm, 2.329)).toBeLessThan(0.02);
    expect(off(ohm, 2.34)).toBeLessThan(0.02);
  });
});

/** The fifty nodes along the edge of the L, in order. */
function alongEdge(): readonly (readonly [number, number])[] {
  const corners = [
    [0, 0],
    [70, 0],
    [70, 35],
    [35, 35],
    [35, 105],
    [0, 105],
  ] as const;
  return corners.flatMap(([x, y], c) => {
    const [toX, toY] = corners[(c + 1) % corners.length]!;
    const steps = Math.round(Math.hypot(toX - x, toY - y) / 7);
    return Array.from({ length: steps }, (_, k) => [x + ((toX - x) * k) / steps, y + ((toY - y) * k) / steps] as const);
  });
}

// boundary elements worked out apart from this program, 8 to a mesh side; 100 ohm metre, 0.6 m deep, radius 4 mm
describe('loops and meshes as clubs build them, to 2 %', () => {
  it.each([
    [6, 1, 8.3975],
    [6, 2, 7.5104],
    [10, 1, 5.4607],
    [10, 2, 4.8363],
    [10, 4, 4.4024],
    [20, 2, 2.6265],
    [20, 4, 2.3572],
  ])('%d m, %d meshes to a side', (sideM, meshes, ohm) => {
    expect(off(ohmOfBody(square(sideM, meshes, 0.6, 0.004)), ohm)).toBeLessThan(0.02);
  });
});
