// Cut edges and cut vertices of a large graph, from the built graph, against python3-igraph (compiled C) on the same
// graph.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { MultiUndirectedGraph } from 'graphology';
import { inTurns, median } from './in-turns.mjs';

const NODES = 100_000;
const EDGES = 130_000;
const RUNS = 21;
const MOST_RATIO = 0.8;

const here = dirname(fileURLToPath(import.meta.url));

/** Ours and igraph in turns; wrong when the sets differ, skipped without a python that has igraph. */
export async function cutPointsBench(seed = 1) {
  const name = 'cut edges and vertices of 130 000 bonds against igraph';
  const folder = mkdtempSync(join(tmpdir(), 'cut-points-'));
  try {
    return [{ name, most: MOST_RATIO, ...(await measured(folder, randomPairs(seed))) }];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function measured(folder, pairs) {
  const list = join(folder, 'graph.json');
  writeFileSync(list, JSON.stringify([NODES, pairs]));
  const peer = await startPeer(list);
  if (peer === null) return { skipped: 'no python3 with igraph, so there is nothing to compare with' };
  const { cutPoints } = await bundled(folder);
  const graph = builtGraph(pairs);
  const found = cutPoints(graph);
  const same = isSame(found.edges, 'e', peer.found.edges) && isSame(found.nodes, 'n', peer.found.nodes);
  const { ours, peers } = await inTurns({ ours: () => timed(() => cutPoints(graph)), peers: peer.run }, RUNS);
  peer.stop();
  const count = `${found.edges.length} cut edges, ${found.nodes.length} cut vertices`;
  return {
    ratio: median(ours) / median(peers),
    detail: `clock ${spread(ours)}, igraph ${peer.found.version} ${spread(peers)}; ${count}`,
    ...(same ? {} : { wrong: 'the sets differ from those of igraph' }),
  };
}

function timed(work) {
  const start = performance.now();
  work();
  return performance.now() - start;
}

async function bundled(folder) {
  const outfile = join(folder, 'cut-points.mjs');
  const entry = join(here, '..', '..', 'src', 'bonding', 'cut-points.ts');
  await build({ entryPoints: [entry], bundle: true, format: 'esm', platform: 'node', outfile, logLevel: 'error' });
  return import(pathToFileURL(outfile).href);
}

function builtGraph(pairs) {
  const graph = new MultiUndirectedGraph();
  for (let n = 0; n < NODES; n++) graph.addNode(`n${n}`);
  pairs.forEach(([a, b], e) => {
    graph.addUndirectedEdgeWithKey(`e${e}`, `n${a}`, `n${b}`);
  });
  return graph;
}

/**
 * Any two nodes; every hundredth edge doubles the one before, so parallel edges occur. Edges from a node to itself
 * fall in by chance.
 */
function randomPairs(from) {
  const next = mulberry32(from);
  const pairs = [];
  for (let e = 0; e < EDGES; e++) {
    pairs.push(e % 100 === 99 ? [...pairs[e - 1]] : [Math.floor(next() * NODES), Math.floor(next() * NODES)]);
  }
  return pairs;
}

/** The first python that has igraph, waiting to be asked; null: there is none. */
async function startPeer(list) {
  for (const python of ['/usr/bin/python3', 'python3']) {
    const child = spawn(python, [join(here, 'cut-points.py'), list], { stdio: ['pipe', 'pipe', 'ignore'] });
    child.on('error', () => {});
    const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
    const first = await lines.next();
    if (first.done) continue;
    const run = async () => {
      child.stdin.write('\n');
      return JSON.parse((await lines.next()).value);
    };
    return { found: JSON.parse(first.value), run, stop: () => child.stdin.end() };
  }
  return null;
}

/** Our ids are the letter and the peer's number; both lists stand in the order of the numbers. */
function isSame(names, letter, numbers) {
  return names.length === numbers.length && numbers.every((n, i) => names[i] === letter + n);
}

function spread(values) {
  return `${median(values).toFixed(1)} ms (${Math.min(...values).toFixed(1)} to ${Math.max(...values).toFixed(1)})`;
}

function mulberry32(from) {
  let state = from >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
