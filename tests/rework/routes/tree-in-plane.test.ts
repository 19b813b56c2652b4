/**
 * Routes for two to six ends round buildings and along a trench against trees found by trying places to branch at on grids
 * (tests/reference/tree-in-plane.py: all subsets of ends, all splits; no code shared). The grid's tree can only be too long:
 * by some 1e-5 of its length for what its last grid misses, with a trench by some 1e-3 for the places in a row on it.
 */
import { expect, test } from 'vitest';
import type { Point } from '../../../src/rework/routes/point.ts';
import { shortestRoutes } from '../../../src/rework/routes/shortest-routes.ts';
import { findPython } from '../../reference/python.ts';
import { endsOf, groundOf, isInConvex, type Layout, randomLayout, seededNumbers } from './random-ground.ts';

const seed = Number(process.env.ROUTES_SEED ?? 7);
const count = Number(process.env.ROUTES_COUNT ?? 6);
const python = findPython(['numpy', 'scipy'], 'tree-in-plane: routes against trees on a grid');

type WithTrench = Layout & { readonly trench: readonly [Point, Point, number] | null };

function layouts(from: number, isWithTrench: boolean): readonly WithTrench[] {
  const next = seededNumbers(from);
  return Array.from({ length: count }, (_, i) => {
    const ends = 2 + ((i + 1) % 5);
    if (!isWithTrench) return { ...randomLayout(next, ends, (i * 3) % 5), trench: null };
    const trench = [[1 + 3 * next(), 10 * next()], [6 + 3 * next(), 10 * next()], 0.4 + 0.4 * next()] as const;
    for (;;) {
      const layout = randomLayout(next, ends, i % 3);
      if (!layout.buildings.some((box) => lies(box, trench[0], trench[1]))) return { ...layout, trench };
    }
  });
}

/** Whether a straight piece comes into a convex shape, or near, by places close together. */
function lies(box: readonly Point[], [aE, aN]: Point, [bE, bN]: Point, marginM = 0.01): boolean {
  for (let s = 0; s <= 1; s += 0.01) {
    if (isInConvex(box, [aE + s * (bE - aE), aN + s * (bN - aN)], marginM)) return true;
  }
  return false;
}

test.skipIf(python === null).each([
  ['round buildings', false, 2e-3],
  ['with a trench', true, 5e-3],
] as const)(
  `%s: no dearer than the best tree on a grid, seed ${seed} (needs python3 with scipy)`,
  (_, isWithTrench, missed) => {
    const all = layouts(seed, isWithTrench);
    const theirs = python!.run('tree-in-plane.py', all) as number[];
    all.forEach((layout, i) => {
      const { trench } = layout;
      const trenches = trench === null ? [] : [{ id: 'old', routeM: [trench[0], trench[1]], factor: trench[2] }];
      const route = shortestRoutes({ ...groundOf(layout), trenches }, endsOf(layout.ends));
      if (route.none !== null) throw new Error(`layout ${i}: ${route.none}`);
      // A clearance of nothing is taken as a millionth of the extent, at each corner that is gone round.
      expect(route.costM, `layout ${i}`).toBeLessThanOrEqual(theirs[i]! * (1 + 2e-5));
      expect(route.costM, `layout ${i}`).toBeGreaterThan(theirs[i]! * (1 - missed));
      expect(route.costM).toBeGreaterThanOrEqual(route.costAtLeastM);
      const pieces = route.legs.flatMap(({ routeM }) => routeM.slice(1).map((p, j) => [routeM[j]!, p] as const));
      expect(pieces.some(([a, b]) => layout.buildings.some((box) => lies(box, a, b, -1e-5)))).toBe(false);
    });
  },
  120_000,
);
