/** Laws that hold for every ground: order, mirror, turn, size, and that less in the way is never longer. Seeded trials. */
import { describe, expect, test } from 'vitest';
import type { Ground } from '../../../src/rework/routes/ground.ts';
import type { Point } from '../../../src/rework/routes/point.ts';
import { type FoundRoute, shortestRoutes } from '../../../src/rework/routes/shortest-routes.ts';
import { endsOf, groundOf, type Layout, randomLayout, seededNumbers } from './random-ground.ts';

const seed = Number(process.env.ROUTES_SEED ?? 3);

/** Ends in the clear: one that lies in a clearance leaves it by the nearest way out, whatever lies beyond. */
const CLEARANCE_M = 0.005;

function trials(count: number, ends: (i: number) => number): readonly Layout[] {
  const next = seededNumbers(seed);
  return Array.from({ length: count }, (_, i) => randomLayout(next, ends(i), 1 + (i % 5)));
}

function moved(layout: Layout, to: (p: Point) => Point): Layout {
  return { ends: layout.ends.map(to), buildings: layout.buildings.map((b) => b.map(to)) };
}

function trenchesOf(layout: Layout): Ground['trenches'] {
  const [a, b] = [layout.buildings[0]![0]!, layout.ends[0]!];
  return [
    {
      id: 'old',
      routeM: [
        [a[0] - 3, a[1]],
        [b[0] + 3, b[1] + 0.5],
      ],
      factor: 0.6,
    },
  ];
}

function route(layout: Layout, clearanceM = CLEARANCE_M, trenches: Ground['trenches'] = []): FoundRoute | null {
  const found = shortestRoutes({ ...groundOf(layout, clearanceM), trenches }, endsOf(layout.ends));
  return found.none === null ? found : null;
}

const near = (a: number | undefined, b: number | undefined, share = 1e-7) => {
  expect(a === undefined).toBe(b === undefined);
  if (a !== undefined) expect(Math.abs(a - b!)).toBeLessThanOrEqual(share * Math.max(1, b!));
};

describe(`seed ${seed}`, () => {
  test('the same again, digit by digit', () => {
    for (const l of trials(10, (i) => 2 + (i % 4))) {
      expect(JSON.stringify(route(l, 0.1, trenchesOf(l)))).toBe(JSON.stringify(route(l, 0.1, trenchesOf(l))));
    }
  });

  test('from a to b as from b to a, with trenches too', () => {
    for (const l of trials(40, () => 2)) {
      const back = { ...l, ends: [...l.ends].reverse() };
      near(route(back, 0.1, trenchesOf(l))?.costM, route(l, 0.1, trenchesOf(l))?.costM, 1e-9);
    }
  });

  test('turned and shifted the same length, in another unit the same shape', () => {
    const [c, s] = [Math.cos(0.7), Math.sin(0.7)];
    for (const l of trials(24, () => 2)) {
      const { costM } = route(l, 0.1)!;
      near(
        route(
          moved(l, ([e, n]) => [e * c - n * s + 50, e * s + n * c - 20]),
          0.1,
        )?.costM,
        costM,
      );
      near(
        route(
          moved(l, ([e, n]) => [-e, n]),
          0.1,
        )?.costM,
        costM,
      );
      near(
        route(
          moved(l, ([e, n]) => [e * 1000, n * 1000]),
          100,
        )?.costM,
        costM * 1000,
      );
      near(
        route(
          moved(l, ([e, n]) => [e / 1000, n / 1000]),
          1e-4,
        )?.costM,
        costM / 1000,
        1e-10,
      );
    }
  });

  test('trees too, as far as junctions are found', () => {
    for (const l of trials(9, (i) => 3 + (i % 3))) {
      const { costM } = route(l)!;
      near(route({ ...l, ends: [...l.ends].reverse() })?.costM, costM, 1e-5);
      near(route(moved(l, ([e, n]) => [n, -e]))?.costM, costM, 1e-5);
    }
  });

  test('a building less is never longer, a trench more never dearer, an end less never longer', () => {
    for (const l of trials(24, (i) => 2 + (i % 3))) {
      const whole = route(l);
      if (whole === null) continue;
      const share = l.ends.length === 2 ? 1e-9 : 1e-5;
      for (const without of l.buildings) {
        const less = route({ ...l, buildings: l.buildings.filter((b) => b !== without) })!;
        expect(less.lengthM).toBeLessThanOrEqual(whole.lengthM * (1 + share) + 1e-4);
      }
      expect(route(l, CLEARANCE_M, trenchesOf(l))!.costM).toBeLessThanOrEqual(whole.costM * (1 + share));
      if (l.ends.length > 2) {
        expect(route({ ...l, ends: l.ends.slice(1) })!.costM).toBeLessThanOrEqual(whole.costM * (1 + share));
      }
    }
  });

  test('what is claimed of a route is so: legs join all ends, lengths are those of the legs, the bound is below', () => {
    for (const l of trials(20, (i) => 2 + (i % 7))) {
      const found = route(l, 0.1, trenchesOf(l));
      if (found === null) continue;
      const names = new Set([found.legs[0]!.from]);
      for (let grows = true; grows; ) {
        const before = names.size;
        for (const { from, to } of found.legs) if (names.has(from) || names.has(to)) names.add(from).add(to);
        grows = names.size > before;
      }
      for (const { id } of endsOf(l.ends)) expect(names.has(id)).toBe(true);
      for (const { routeM, lengthM, inTrenchM } of found.legs) {
        const along = routeM
          .slice(1)
          .reduce((m, p, i) => m + Math.hypot(p[0] - routeM[i]![0], p[1] - routeM[i]![1]), 0);
        expect(along).toBeCloseTo(lengthM, 6);
        expect(inTrenchM).toBeLessThanOrEqual(lengthM + 1e-9);
      }
      expect(found.lengthM - 0.4 * found.inTrenchM).toBeCloseTo(found.costM, 6);
      expect(found.costAtLeastM).toBeLessThanOrEqual(found.costM);
      // 2 (1 - 1/k) times the shortest is the most that the tree it begins with can be.
      expect(found.costM).toBeLessThanOrEqual(2 * (1 - 1 / l.ends.length) * found.costAtLeastM * (1 + 1e-9));
    }
  });
});
