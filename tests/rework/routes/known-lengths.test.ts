/** Lengths that geometry gives by hand; the derivation stands beside each. */
import { describe, expect, test } from 'vitest';
import type { Area, Ground, Trench } from '../../../src/rework/routes/ground.ts';
import type { Point } from '../../../src/rework/routes/point.ts';
import { type FoundRoute, type RouteEnd, shortestRoutes } from '../../../src/rework/routes/shortest-routes.ts';
import { endsOf } from './random-ground.ts';

const box = (id: string, west: number, south: number, east: number, north: number, clearanceM = 0): Area => ({
  id,
  cornersM: [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
  ],
  clearanceM,
});
const ground = (areas: readonly Area[], trenches: readonly Trench[] = []): Ground => ({
  areas,
  barriers: [],
  trenches,
});
const open = ground([]);

function found(on: Ground, ends: readonly RouteEnd[]): FoundRoute {
  const route = shortestRoutes(on, ends);
  if (route.none !== null) throw new Error(`${route.none}: ${route.at}`);
  return route;
}
const joined = (on: Ground, ...places: readonly Point[]): FoundRoute => found(on, endsOf(places));

/** A clearance of nothing is taken as a millionth of the extent: so much may be missing at a corner. */
const HAIR = 1e-4;

describe('in the open', () => {
  test('two ends: a straight line, 3-4-5', () => {
    const { lengthM, legs, around, costAtLeastM } = joined(open, [0, 0], [3, 4]);
    expect([lengthM, legs.map((l) => l.routeM), around, costAtLeastM]).toEqual([
      5,
      [
        [
          [0, 0],
          [3, 4],
        ],
      ],
      [],
      5,
    ]);
  });

  test('equilateral triangle of side a: three ways of a / sqrt 3 from its Fermat point, sqrt 3 a', () => {
    const { lengthM, legs, costAtLeastM } = joined(open, [0, 0], [7, 0], [3.5, 3.5 * Math.sqrt(3)]);
    expect(lengthM).toBeCloseTo(7 * Math.sqrt(3), 9);
    expect(costAtLeastM).toBeCloseTo(7 * Math.sqrt(3), 6);
    expect(legs).toHaveLength(3);
  });

  test('a triangle with an angle of 120 degrees or more: no junction, its two shorter sides', () => {
    const { lengthM, legs } = joined(open, [-10, 1], [0, 0], [10, 1]);
    expect(lengthM).toBeCloseTo(2 * Math.sqrt(101), 9);
    expect(legs).toHaveLength(2);
  });

  test('unit square: 1 + sqrt 3, two junctions', () => {
    const { lengthM, legs } = joined(open, [0, 0], [1, 0], [1, 1], [0, 1]);
    expect(lengthM).toBeCloseTo(1 + Math.sqrt(3), 9);
    expect(new Set(legs.flatMap((l) => [l.from, l.to]))).toEqual(
      new Set(['end-0', 'end-1', 'end-2', 'end-3', 'junction 1', 'junction 2']),
    );
  });

  test('oblong 1 by 2: 2 + sqrt 3 (two junctions on its long axis; a b + sqrt 3 in general for b > 1 / sqrt 3)', () => {
    expect(joined(open, [0, 0], [2, 0], [2, 1], [0, 1]).lengthM).toBeCloseTo(2 + Math.sqrt(3), 9);
  });

  test('regular hexagon of side 1: five of its sides (the known minimal tree of a hexagon)', () => {
    const corners = Array.from(
      { length: 6 },
      (_, i): Point => [Math.cos((i * Math.PI) / 3), Math.sin((i * Math.PI) / 3)],
    );
    expect(joined(open, ...corners).lengthM).toBeCloseTo(5, 8);
  });

  test('ends in a line, in any order: from the first to the last', () => {
    expect(joined(open, [3, 3], [0, 0], [9, 9], [1, 1], [5, 5]).lengthM).toBeCloseTo(9 * Math.SQRT2, 9);
    expect(joined(open, ...[4, 0, 7, 2, 9, 1, 3].map((x): Point => [x, 0])).lengthM).toBeCloseTo(9, 9);
  });

  test('ends at one place: no length', () => {
    expect(joined(open, [2, 2], [2, 2]).lengthM).toBe(0);
    expect(joined(open, [2, 2], [2, 2], [2, 2]).lengthM).toBe(0);
    expect(joined(open, [2, 2], [2, 2], [5, 6]).lengthM).toBeCloseTo(5, 9);
  });
});

describe('round a building', () => {
  test('square of side 2 between ends 1 m off its walls: 2 + 2 sqrt 2', () => {
    const { lengthM, around } = joined(ground([box('house', -1, -1, 1, 1)]), [-2, 0], [2, 0]);
    expect(Math.abs(lengthM - (2 + 2 * Math.SQRT2))).toBeLessThan(HAIR);
    expect(around).toEqual(['house']);
  });

  test('with a clearance: tangents to the corner circles are the least, octagons round them the most', () => {
    const [c, side] = [0.3, 1];
    const { lengthM, legs } = joined(ground([box('house', -1, -1, 1, 1, c)]), [-3, 0], [3, 0]);
    // From (-3, 0) a tangent to the circle of radius c about (-1, 1), the arc up to straight north, then along the wall.
    const far = Math.hypot(2, side);
    const lean = Math.atan2(side, 2) + Math.asin(c / far);
    const rounded = 2 * (Math.sqrt(far * far - c * c) + c * lean) + 2;
    expect(lengthM).toBeGreaterThan(rounded);
    expect(lengthM).toBeLessThan(rounded + 2 * c * (2 * Math.tan(Math.PI / 8) - Math.PI / 4) + 0.02);
    for (const [e, n] of legs[0]!.routeM) {
      expect(Math.hypot(Math.max(0, Math.abs(e) - 1), Math.max(0, Math.abs(n) - 1))).toBeGreaterThan(c - 1e-6);
    }
  });

  test('a passage of less than twice the clearance is none; of twice, it is one', () => {
    const pair = (gap: number) => ground([box('a', -1, 0.5 * gap, 1, 9, 0.5), box('b', -1, -9, 1, -0.5 * gap, 0.5)]);
    expect(joined(pair(1.001), [-3, 0], [3, 0]).lengthM).toBeCloseTo(6, 9);
    const round = joined(pair(0.99), [-3, 0], [3, 0]);
    // At least to the far wall and back over it: 2 sqrt(2^2 + 9^2) + 2 by the raw corners.
    expect(round.lengthM).toBeGreaterThan(2 * Math.hypot(2, 9) + 2);
    expect(round.around.length).toBe(1);
  });

  test('a part on a wall is reached straight out of it; the way through the clearance counts', () => {
    const house = ground([box('house', -1, -1, 1, 1, 0.3)]);
    expect(joined(house, [1, 0], [4, 0]).lengthM).toBeCloseTo(3, 9);
    // On the west wall: out 0.3 m, and round.
    const { legs } = joined(house, [-1, 0.5], [4, 0.5]);
    expect(legs[0]!.routeM[1]![0]).toBeCloseTo(-1.3, 6);
    expect(legs[0]!.routeM[1]![1]).toBeCloseTo(0.5, 6);
  });

  test('two parts on one wall are joined along it, two on different walls are not through the house', () => {
    const house = ground([box('house', -1, -1, 1, 1, 0.3)]);
    expect(joined(house, [-1, -0.4], [-1, 0.6]).lengthM).toBeCloseTo(1, 9);
    expect(joined(house, [-1, 0], [1, 0]).lengthM).toBeGreaterThan(4);
  });

  test('an end inside leaves by the nearest wall', () => {
    const { legs } = joined(ground([box('house', 0, 0, 10, 10, 0.3)]), [1, 4], [20, 4]);
    expect(legs[0]!.routeM[1]![0]).toBeCloseTo(-0.3, 6);
  });

  test('four ends at the corners round a square building', () => {
    const { lengthM } = joined(ground([box('house', -1, -1, 1, 1)]), [-2, -2], [2, -2], [2, 2], [-2, 2]);
    // In the open 4 (1 + sqrt 3) = 10.93 through the middle; three sides of the square of ends are 12.
    expect(lengthM).toBeGreaterThan(4 * (1 + Math.sqrt(3)));
    expect(lengthM).toBeLessThan(12);
  });
});

describe('no way', () => {
  const ring: Ground = {
    areas: [],
    barriers: [
      {
        id: 'gas',
        routeM: [
          [-2, -2],
          [2, -2],
          [2, 2],
          [-2, 2],
          [-2, -2],
        ],
        clearanceM: 0.5,
      },
    ],
    trenches: [],
  };

  test('an end within a closed ring of pipe is cut off from one outside, not from one within', () => {
    expect(
      shortestRoutes(
        ring,
        endsOf([
          [0, 0],
          [5, 0],
        ]),
      ),
    ).toEqual({ none: 'no way', at: ['end-1'] });
    expect(joined(ring, [0, 0], [1, 0]).lengthM).toBe(1);
  });

  test('an end in a room filled by its clearances cannot be left', () => {
    const narrow: Ground = { ...ring, barriers: [{ ...ring.barriers[0]!, clearanceM: 3 }] };
    expect(
      shortestRoutes(
        narrow,
        endsOf([
          [0, 0],
          [9, 0],
        ]),
      ),
    ).toEqual({ none: 'shut in', at: ['end-0'] });
  });

  test('an end without a usable place', () => {
    expect(
      shortestRoutes(
        open,
        endsOf([
          [0, 0],
          [Number.NaN, 1],
        ]),
      ),
    ).toEqual({ none: 'no places', at: ['end-1'] });
  });
});

describe('trenches', () => {
  const along: Trench = {
    id: 'old',
    routeM: [
      [-10, 3],
      [10, 3],
    ],
    factor: 0.5,
  };

  test('joined at the angle whose cosine is the factor: 16 f + 2 h sqrt(1 - f^2)', () => {
    const { costM, inTrenchM, lengthM } = joined(ground([], [along]), [-8, 0], [8, 0]);
    expect(costM).toBeCloseTo(16 * 0.5 + 2 * 3 * Math.sqrt(1 - 0.25), 9);
    // Each way in covers h f / sqrt(1 - f^2) along the trench.
    expect(inTrenchM).toBeCloseTo(16 - (2 * 3 * 0.5) / Math.sqrt(0.75), 6);
    expect(lengthM - inTrenchM).toBeCloseTo((2 * 3) / Math.sqrt(0.75), 6);
  });

  test('too far off it is not used: straight across costs 2, by the trench at least 2 f + 2 h sqrt(1 - f^2)', () => {
    const { costM, inTrenchM } = joined(ground([], [along]), [-1, 0], [1, 0]);
    expect([costM, inTrenchM]).toEqual([2, 0]);
  });

  test('a branch leaves a trench that is used on both sides straight across', () => {
    const { costM } = joined(ground([], [along]), [-9, 3], [9, 3], [0, 5]);
    expect(costM).toBeCloseTo(18 * 0.5 + 2, 6);
  });

  test('a trench within a clearance is not used', () => {
    const house = box('house', -20, 3.1, 20, 8, 0.3);
    expect(joined(ground([house], [along]), [-8, 0], [8, 0]).inTrenchM).toBe(0);
  });

  test('a buried wire is met anywhere along it, and joins what is joined to it', () => {
    const wire: RouteEnd = {
      id: 'wire',
      placesM: [
        [0, 0],
        [10, 0],
      ],
    };
    expect(found(open, [wire, { id: 'rod', placesM: [[4, 3]] }]).lengthM).toBeCloseTo(3, 9);
    const three = found(open, [wire, { id: 'a', placesM: [[2, 3]] }, { id: 'b', placesM: [[9, 1]] }]);
    expect(three.lengthM).toBeCloseTo(4, 9);
    expect(three.legs.map((l) => [l.from, l.to])).toEqual([
      ['wire', 'a'],
      ['wire', 'b'],
    ]);
  });
});
