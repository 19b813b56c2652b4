/**
 * The graph algorithms against networkx, on random multigraphs: parallel bonds, bonds from a node to itself, islands.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { bestWays } from '../../src/bonding/best-way.ts';
import { components } from '../../src/bonding/components.ts';
import { cutPoints } from '../../src/bonding/cut-points.ts';
import { disjointWays } from '../../src/bonding/disjoint-ways.ts';
import { graphOf, type Question, randomQuestion, seededNumbers } from './random-multigraph.ts';

interface Answer {
  readonly groups: string[][];
  readonly cutEdges: string[];
  readonly cutNodes: string[];
  readonly ways: { readonly edge: number; readonly node: number; readonly separate: number } | null;
  readonly distances: Record<string, [unknownLengths: number, lengthM: number]>;
}

const COUNT = 500;
const seed = Number(process.env.GRAPH_SEED ?? 20240611);
const python = ['/usr/bin/python3', 'python3'].find((name) => spawnSync(name, ['-c', 'import networkx']).status === 0);
const next = seededNumbers(seed);
const questions = Array.from({ length: COUNT }, () => randomQuestion(next));

if (python === undefined) console.warn('SKIPPED graph-answers: no python3 with networkx here, nothing was compared');
else console.log(`graph-answers: ${COUNT} graphs, seed ${seed} (set GRAPH_SEED for others)`);

describe.skipIf(python === undefined)(`as networkx finds it, seed ${seed} (needs python3 with networkx)`, () => {
  let answers: readonly Answer[] = [];

  beforeAll(() => {
    const script = fileURLToPath(new URL('graph-answers.py', import.meta.url));
    const run = spawnSync(python!, [script], { input: JSON.stringify(questions), encoding: 'utf8', maxBuffer: 1e8 });
    if (run.status !== 0) throw new Error(`graph-answers.py failed: ${run.stderr}`);
    answers = JSON.parse(run.stdout).answers;
  });

  /** Compares one figure of all graphs at once; a difference is shown with the graph that it is of. */
  function each(ours: (q: Question) => unknown, theirs: (a: Answer) => unknown): void {
    expect(answers).toHaveLength(COUNT);
    questions.forEach((q, i) => {
      expect(ours(q), JSON.stringify(q)).toEqual(theirs(answers[i]!));
    });
  }

  test('the random graphs hold what makes trouble', () => {
    const loops = questions.filter((q) => q.edges.some(([, a, b]) => a === b));
    const parallel = questions.filter(
      (q) => new Set(q.edges.map(([, a, b]) => [a, b].sort().join())).size < q.edges.length,
    );
    const islands = answers.filter((a) => a.groups.length > 1);
    const severalWays = answers.filter((a) => a.ways !== null && a.ways.node > 1 && a.ways.node < a.ways.edge);
    const between = answers.filter(
      (a) => a.ways !== null && a.ways.node < a.ways.separate && a.ways.separate < a.ways.edge,
    );
    for (const kind of [loops, parallel, islands]) expect(kind.length).toBeGreaterThan(100);
    expect(severalWays.length).toBeGreaterThan(10);
    expect(between.length).toBeGreaterThan(0);
    expect(answers.filter((a) => a.cutEdges.length > 0 && a.cutNodes.length > 0).length).toBeGreaterThan(100);
  });

  test('groups', () =>
    each(
      (q) => components(graphOf(q)),
      (a) => a.groups,
    ));
  test('cut edges', () =>
    each(
      (q) => [...cutPoints(graphOf(q)).edges].sort(),
      (a) => a.cutEdges,
    ));
  test('cut vertices', () =>
    each(
      (q) => [...cutPoints(graphOf(q)).nodes].sort(),
      (a) => a.cutNodes,
    ));
  test('edge connectivity of a pair', () =>
    each(
      (q) => waysOf(q, [])?.separate,
      (a) => a.ways?.edge,
    ));
  test('node connectivity of a pair', () =>
    each(
      (q) => waysOf(q, [])?.strict,
      (a) => a.ways?.node,
    ));
  test('ways that share no bond and no breakable node', () =>
    each(
      (q) => waysOf(q, q.breakable)?.separate,
      (a) => a.ways?.separate,
    ));
  test('distances to the nearest target, unknown lengths counted apart', () => each(distancesOf, (a) => a.distances));
});

function waysOf(q: Question, breakable: readonly string[]) {
  if (q.pair === null) return undefined;
  return disjointWays(graphOf(q), ...q.pair, { breakableNode: (id) => breakable.includes(id) });
}

function distancesOf(q: Question): Answer['distances'] {
  const way = bestWays(graphOf(q), q.targets, { passes: (id) => !q.ends.includes(id) });
  const found: Answer['distances'] = {};
  for (const id of q.nodes) {
    const best = way(id);
    if (best !== null) found[id] = [best.unknownLengths, best.lengthAtLeastM];
  }
  return found;
}
