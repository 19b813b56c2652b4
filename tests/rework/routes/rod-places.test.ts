import { describe, expect, test } from 'vitest';
import type { Ground } from '../../../src/rework/routes/ground.ts';
import type { Point } from '../../../src/rework/routes/point.ts';
import { rodPlaces } from '../../../src/rework/routes/rod-places.ts';
import { groundOf, isInConvex, randomLayout, seededNumbers } from './random-ground.ts';

const open: Ground = { areas: [], barriers: [], trenches: [] };
const apartM = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe('more rods', () => {
  test('in the open: in one line, a spacing apart', () => {
    const { placesM, joinedFrom } = rodPlaces(open, { fromM: [1, 2], count: 3, spacingM: 5, othersM: [] });
    expect(placesM).toEqual([
      [6, 2],
      [11, 2],
      [16, 2],
    ]);
    expect(joinedFrom).toEqual([-1, 0, 1]);
  });

  test('away from an electrode that is there: of all lines the one that leads straight away', () => {
    const { placesM } = rodPlaces(open, { fromM: [0, 0], count: 1, spacingM: 5, othersM: [[6, 0]] });
    expect(placesM[0]![0]).toBeCloseTo(-5, 9);
    expect(placesM[0]![1]).toBeCloseTo(0, 9);
  });

  test('an electrode on a wall: from outside the clearance, none in the building', () => {
    const corners: readonly Point[] = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ];
    const ground = { ...open, areas: [{ id: 'house', cornersM: corners, clearanceM: 0.3 }] };
    const { placesM } = rodPlaces(ground, { fromM: [10, 5], count: 4, spacingM: 3, othersM: [] });
    expect(placesM).toHaveLength(4);
    for (const p of placesM) expect(isInConvex(corners, p, 0.29)).toBe(false);
  });

  test('no room for a line: a tree; no room at all: none', () => {
    // A yard of 7 by 7 within a fence of pipe; rods 3 apart fit, three in line from the middle do not.
    const fence: readonly Point[] = [
      [0, 0],
      [7, 0],
      [7, 7],
      [0, 7],
      [0, 0],
    ];
    const yard = { ...open, barriers: [{ id: 'gas', routeM: fence, clearanceM: 0.2 }] };
    const { placesM, joinedFrom } = rodPlaces(yard, { fromM: [3.5, 3.5], count: 4, spacingM: 3, othersM: [] });
    expect(placesM).toHaveLength(4);
    expect(joinedFrom.filter((n) => n === -1).length).toBeGreaterThan(1);
    expect(rodPlaces(yard, { fromM: [3.5, 3.5], count: 2, spacingM: 9, othersM: [] }).placesM).toEqual([]);
  });

  test('nothing is asked, or nonsense', () => {
    for (const [count, spacingM] of [
      [0, 3],
      [-1, 3],
      [2, 0],
      [2, Number.NaN],
      [Infinity, 1],
    ] as const) {
      expect(rodPlaces(open, { fromM: [0, 0], count, spacingM, othersM: [] }).placesM).toEqual([]);
    }
  });

  test('seeded trials: spacing kept, clear, joined clear, the same again', () => {
    const next = seededNumbers(9);
    for (let i = 0; i < 40; i++) {
      const layout = randomLayout(next, 4, i % 6);
      const wanted = { fromM: layout.ends[0]!, count: 1 + (i % 4), spacingM: 2, othersM: layout.ends.slice(1) };
      const ground = groundOf(layout, 0.005);
      const found = rodPlaces(ground, wanted);
      expect(rodPlaces(ground, wanted)).toEqual(found);
      const all = [...layout.ends, ...found.placesM];
      found.placesM.forEach((p, n) => {
        for (const q of all) if (q !== p) expect(apartM(p, q)).toBeGreaterThanOrEqual(2 - 1e-6);
        const from = found.joinedFrom[n]! < 0 ? wanted.fromM : found.placesM[found.joinedFrom[n]!]!;
        for (let s = 0; s <= 1; s += 0.02) {
          const at: Point = [from[0] + s * (p[0] - from[0]), from[1] + s * (p[1] - from[1])];
          expect(layout.buildings.some((box) => isInConvex(box, at))).toBe(false);
        }
      });
    }
  });
});
