/** Ground that no site has, or only by mistake: nothing may throw, hang, or give a length that is no number. */
import { describe, expect, test } from 'vitest';
import type { Area, Ground } from '../../../src/rework/routes/ground.ts';
import type { Point } from '../../../src/rework/routes/point.ts';
import { shortestRoutes } from '../../../src/rework/routes/shortest-routes.ts';
import { endsOf, randomLayout, seededNumbers, turnedBox } from './random-ground.ts';

const seed = Number(process.env.ROUTES_SEED ?? 5);
const next = seededNumbers(seed);
const pick = (n: number): number => Math.floor(next() * n);

/** On a coarse grid, so that places meet, lie in a line, touch and cover each other. */
const gridPlace = (): Point => [pick(7), pick(7)];

function randomArea(i: number): Area {
  const corners = Array.from({ length: pick(9) }, gridPlace);
  return { id: `a${i % 4}`, cornersM: corners, clearanceM: [0, 0.25, 0.5, 1, -1, Number.NaN][pick(6)]! };
}

function randomGround(): Ground {
  return {
    areas: Array.from({ length: pick(5) }, (_, i) => randomArea(i)),
    barriers: Array.from({ length: pick(3) }, (_, i) => ({
      id: `b${i}`,
      routeM: Array.from({ length: pick(4) }, gridPlace),
      clearanceM: pick(3) / 2,
    })),
    trenches: Array.from({ length: pick(3) }, (_, i) => ({
      id: `t${i}`,
      routeM: Array.from({ length: pick(5) }, gridPlace),
      factor: [0, 0.5, 0.9, 1, 2, Number.NaN][pick(6)]!,
    })),
  };
}

test(`90 grounds of touching, crossing and empty shapes, seed ${seed}`, () => {
  const kinds = new Set<string | null>();
  for (let i = 0; i < 90; i++) {
    const ground = randomGround();
    const ends = endsOf(Array.from({ length: pick(6) }, gridPlace));
    const found = shortestRoutes(ground, ends);
    kinds.add(found.none);
    if (found.none !== null) {
      expect(found.at.length, JSON.stringify({ ground, ends })).toBeGreaterThan(0);
      continue;
    }
    expect(Number.isFinite(found.lengthM) && found.lengthM >= 0, JSON.stringify({ ground, ends })).toBe(true);
    expect(found.costM).toBeLessThanOrEqual(found.lengthM + 1e-6);
    expect(found.legs.flatMap((l) => l.routeM.flat()).every(Number.isFinite)).toBe(true);
  }
  expect([...kinds].sort()).toEqual([null, 'no way', 'shut in'].sort());
});

describe('by name', () => {
  const joined = (areas: readonly Area[], ...places: readonly Point[]) =>
    shortestRoutes({ areas, barriers: [], trenches: [] }, endsOf(places));
  const area = (id: string, ...cornersM: readonly Point[]): Area => ({ id, cornersM, clearanceM: 0 });

  test('a shape that crosses itself is all it winds round', () => {
    const tie = area('tie', [0, 0], [4, 4], [4, 0], [0, 4]);
    // Between the lobes, through the crossing, no way leads: round a lobe from below to above is longer than straight.
    const found = joined([tie], [2, -1], [2, 5]);
    expect(found.none).toBeNull();
    if (found.none === null) expect(found.lengthM).toBeGreaterThan(6.5);
  });

  test('touching and overlapping buildings are one', () => {
    const a = area('a', [0, 0], [2, 0], [2, 9], [0, 9]);
    const b = area('b', [2, 0], [4, 0], [4, 9], [2, 9]);
    const c = area('c', [1, -9], [3, -9], [3, 1], [1, 1]);
    const found = joined([a, b, c], [-1, 4], [5, 4]);
    if (found.none !== null) throw new Error(found.none);
    // Over the top: 2 sqrt(1 + 25) + 4, as below c it is farther.
    expect(found.lengthM).toBeCloseTo(2 * Math.sqrt(26) + 4, 3);
    expect(found.around).toEqual(['a', 'b']);
  });

  test('a shape of one corner, of two, of corners at one place, of corners that are no numbers', () => {
    const odd = [area('post', [1, 0.5]), area('wall', [2, -1], [2, 1]), area('same', [4, 4], [4, 4], [4, 4])];
    const found = joined([...odd, area('none', [Number.NaN, 0], [0, Infinity]), area('empty')], [0, 0], [4, 0]);
    if (found.none !== null) throw new Error(found.none);
    expect(found.lengthM).toBeCloseTo(2 * Math.sqrt(5), 3);
    expect(found.around).toEqual(['wall']);
  });

  test('no ends, and one', () => {
    expect(joined([])).toMatchObject({ none: null, lengthM: 0, legs: [] });
    expect(joined([], [1, 1])).toMatchObject({ none: null, lengthM: 0, legs: [] });
  });

  test('far from the origin, as map coordinates are', () => {
    const at: Point = [548_123, 5_802_456];
    const house = area(
      'house',
      ...(
        [
          [-1, -1],
          [1, -1],
          [1, 1],
          [-1, 1],
        ] as const
      ).map(([e, n]): Point => [at[0] + e, at[1] + n]),
    );
    const found = joined([house], [at[0] - 2, at[1]], [at[0] + 2, at[1]]);
    // The extent is taken as at least a millionth of the coordinates, so that edges stay above their last digit.
    expect(found.none === null ? found.lengthM : null).toBeCloseTo(2 + 2 * Math.SQRT2, 3);
  });

  test('200 buildings, two ends and six', () => {
    const two = seededNumbers(seed + 1);
    const { ends } = randomLayout(two, 6, 0);
    const areas = Array.from({ length: 200 }, (_, i): Area => {
      const corners = turnedBox(two, 100);
      const [e, n] = corners[0]!;
      return {
        id: `h${i}`,
        cornersM: corners.map(([x, y]): Point => [e + (x - e) / 8, n + (y - n) / 8]),
        clearanceM: 0.3,
      };
    });
    const start = performance.now();
    const spread = ends.map(([e, n]): Point => [e * 10, n * 10]);
    expect(['shut in', null]).toContain(joined(areas, spread[0]!, spread[1]!).none);
    const found = joined(areas, ...spread);
    if (found.none === null) expect(found.lengthM).toBeGreaterThanOrEqual(found.costAtLeastM);
    expect(performance.now() - start).toBeLessThan(60_000);
  }, 90_000);
});
