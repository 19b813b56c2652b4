import type { RouteGraph } from './route-graph.ts';
import { smallTree } from './small-tree.ts';
import { prunedTree } from './spanning-tree.ts';
import type { GraphTree } from './steiner-on-graph.ts';
import { neighboursOf } from './tree-shape.ts';

/** Pieces of a tree that are solved anew have so many places to join; more take long. */
const WINDOW = 4;
/** So many pieces at most, or many ends would take minutes. */
const MOST_WINDOWS = 60;

/**
 * A short tree that joins more ends than can be solved exactly: a tree that is known, piece by piece of a few
 * neighbouring ends solved anew. Never longer than the tree that it begins with.
 */
export function largeTree(graph: RouteGraph, ends: readonly number[], known: GraphTree): GraphTree {
  let best = known;
  for (let i = 0; i < Math.min(MOST_WINDOWS, 2 * ends.length); i++) {
    const window = windowFrom(best, ends, ends[i % ends.length]!);
    if (window === null) continue;
    const { inside, outside, stops } = window;
    const knownM = inside.reduce((sum, [a, b]) => sum + (graph.link(a, b)?.costM ?? Infinity), 0);
    const part = smallTree(graph, stops, knownM);
    if (part === null || !(part.costM < knownM)) continue;
    const next = prunedTree(graph, ends, [...outside, ...part.edges]);
    if (next.costM < best.costM * (1 - 1e-12)) best = next;
  }
  return best;
}

type Edge = readonly [number, number];

interface Window {
  readonly inside: readonly Edge[];
  readonly outside: readonly Edge[];
  /** Ends in it, and where the rest of the tree hangs on it. */
  readonly stops: readonly number[];
}

/** A connected piece of the tree round one end, grown edge by edge as long as it has few enough stops; null under three. */
function windowFrom(tree: GraphTree, ends: readonly number[], start: number): Window | null {
  const around = neighboursOf(tree);
  const nodes = [start];
  let found: Window | null = null;
  for (let i = 0; i < nodes.length; i++) {
    for (const next of around.get(nodes[i]!) ?? []) {
      if (nodes.includes(next)) continue;
      const window = windowOf(tree, ends, new Set([...nodes, next]));
      if (window.stops.length > WINDOW) continue;
      nodes.push(next);
      if (window.stops.length > 2) found = window;
    }
  }
  return found;
}

function windowOf({ edges }: GraphTree, ends: readonly number[], nodes: ReadonlySet<number>): Window {
  const isIn = ([a, b]: Edge) => nodes.has(a) && nodes.has(b);
  const inside = edges.filter(isIn);
  const outside = edges.filter((e) => !isIn(e));
  const hung = new Set(outside.flat());
  return { inside, outside, stops: [...nodes].filter((n) => ends.includes(n) || hung.has(n)) };
}
