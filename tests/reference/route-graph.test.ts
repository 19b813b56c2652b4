/** Ways and trees in the graph of routes against networkx (tests/reference/route-graph.py). */
import { describe, expect, test } from 'vitest';
import { nearestWays } from '../../src/rework/routes/nearest-ways.ts';
import { obstaclesOf } from '../../src/rework/routes/obstacles.ts';
import { routeField } from '../../src/rework/routes/route-field.ts';
import { shortestRoutes } from '../../src/rework/routes/shortest-routes.ts';
import { steinerOnGraph } from '../../src/rework/routes/steiner-on-graph.ts';
import { endsOf, groundOf, randomLayout, seededNumbers } from '../rework/routes/random-ground.ts';
import { findPython } from './python.ts';

interface Answer {
  readonly ways: readonly (number | null)[];
  readonly tree: number | null;
}

const seed = Number(process.env.ROUTES_SEED ?? 11);
const python = findPython(['networkx'], 'route-graph: ways and trees against networkx');

describe.skipIf(python === null)(`as networkx finds it, seed ${seed} (needs python3 with networkx)`, () => {
  test('cheapest trees over two to six nodes of random graphs, some of them in pieces', () => {
    const next = seededNumbers(seed);
    const graphs = Array.from({ length: 60 }, () => randomGraph(next));
    const theirs = python!.run('route-graph.py', graphs) as Answer[];
    for (const [i, { count, edges, ends }] of graphs.entries()) {
      const cost = new Float64Array(count * count).fill(Infinity);
      for (const [a, b, c] of edges) {
        const least = Math.min(c, cost[a * count + b]!);
        cost[a * count + b] = least;
        cost[b * count + a] = least;
      }
      const tree = steinerOnGraph(count, cost, ends);
      expect(tree === null).toBe(theirs[i]!.tree === null);
      if (tree === null) continue;
      expect(tree.costM).toBeCloseTo(theirs[i]!.tree!, 9);
      const sum = tree.edges.reduce((s, [a, b]) => s + cost[a * count + b]!, 0);
      expect(sum).toBeCloseTo(tree.costM, 9);
    }
    expect(theirs.some((t) => t.tree === null)).toBe(true);
  });

  test('ways round buildings and along trenches: all distances in the same graph, and the route between two ends', () => {
    const next = seededNumbers(seed + 1);
    const fields = Array.from({ length: 12 }, (_, i) => {
      const layout = randomLayout(next, 2, 2 + (i % 4));
      const trench = { id: 'old', routeM: [[next() * 10, 0] as const, [next() * 10, 10] as const], factor: 0.5 };
      const ground = { ...groundOf(layout, 0.1), trenches: i % 2 === 0 ? [trench] : [] };
      const ends = endsOf(layout.ends);
      const { graph, ends: nodes } = routeField(ground, ends, obstaclesOf(ground, layout.ends));
      return { graph, nodes, route: shortestRoutes(ground, ends) };
    });
    const questions = fields.map(({ graph, nodes }) => ({
      count: graph.nodes.length,
      ends: nodes,
      tree: false,
      // All pairs, asked one by one: more than the links that our own search follows.
      edges: graph.nodes.flatMap((_, i) =>
        graph.nodes.slice(0, i).flatMap((__, j) => {
          const link = graph.link(i, j);
          return link === null ? [] : [[i, j, link.costM] as const];
        }),
      ),
    }));
    const theirs = python!.run('route-graph.py', questions) as Answer[];
    fields.forEach(({ graph, nodes, route }, i) => {
      const ours = nearestWays(graph, nodes[0]!, {}).costM;
      theirs[i]!.ways.forEach((far, n) => {
        if (far === null) expect(ours[n]).toBe(Infinity);
        else expect(ours[n]).toBeCloseTo(far, 9);
      });
      expect(route.none).toBeNull();
      if (route.none === null) expect(route.costM).toBeCloseTo(theirs[i]!.ways[nodes[1]!]!, 9);
    });
  });
});

function randomGraph(next: () => number) {
  const count = 6 + Math.floor(next() * 5);
  const edges = Array.from({ length: Math.floor(count * (1 + next())) }, () => {
    const [a, b] = [Math.floor(next() * count), Math.floor(next() * count)] as const;
    return [a, b, Math.round(next() * 1000) / 100] as const;
  }).filter(([a, b]) => a !== b);
  const wanted = 2 + Math.floor(next() * 5);
  const ends = [...new Set(Array.from({ length: wanted }, () => Math.floor(next() * count)))];
  return { count, edges, ends };
}
