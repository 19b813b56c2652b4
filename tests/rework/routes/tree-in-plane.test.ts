/**
 * Routes for three to six ends round buildings against trees found by trying places to branch at on grids
 * (tests/reference/tree-in-plane.py: all subsets of ends, all splits; no code shared). The grid's tree can only be too long.
 */
import { expect, test } from 'vitest';
import { shortestRoutes } from '../../../src/rework/routes/shortest-routes.ts';
import { findPython } from '../../reference/python.ts';
import { endsOf, groundOf, isInConvex, randomLayout, seededNumbers } from './random-ground.ts';

const seed = Number(process.env.ROUTES_SEED ?? 7);
const next = seededNumbers(seed);
const layouts = Array.from({ length: Number(process.env.ROUTES_COUNT ?? 16) }, (_, i) =>
  randomLayout(next, 3 + (i % 4), (i * 3) % 5),
);
const python = findPython(['numpy', 'scipy'], 'tree-in-plane: routes against trees on a grid');

test.skipIf(python === null)(
  `no longer than the best tree on a grid, seed ${seed} (needs python3 with scipy)`,
  () => {
    const theirs = python!.run('tree-in-plane.py', layouts) as number[];
    layouts.forEach((layout, i) => {
      const route = shortestRoutes(groundOf(layout), endsOf(layout.ends));
      if (route.none !== null) throw new Error(`layout ${i}: ${route.none}`);
      // A clearance of nothing is taken as a ten-millionth of the extent, at each corner that is gone round.
      expect(route.lengthM, `layout ${i}`).toBeLessThanOrEqual(theirs[i]! * (1 + 1e-5));
      expect(route.lengthM, `layout ${i}`).toBeGreaterThan(theirs[i]! * (1 - 2e-3));
      expect(route.lengthM).toBeGreaterThanOrEqual(route.costAtLeastM);
      for (const { routeM } of route.legs) {
        for (const [from, to] of routeM.slice(1).map((p, j) => [routeM[j]!, p] as const)) {
          for (let s = 0; s <= 1; s += 0.01) {
            const p = [from[0] + s * (to[0] - from[0]), from[1] + s * (to[1] - from[1])] as const;
            expect(layout.buildings.some((box) => isInConvex(box, p, -1e-6))).toBe(false);
          }
        }
      }
    });
  },
  120_000,
);
