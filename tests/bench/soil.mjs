// Soil against numpy and LAPACK on the same work, in turns in one run: Cholesky, then whole sites.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { build } from 'esbuild';
import { inTurns, median } from './in-turns.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const source = join(here, '..', '..', 'src');

/** All soil benches; those against a peer are skipped by name without a python that has scipy. */
export async function soilBenches() {
  const folder = mkdtempSync(join(tmpdir(), 'soil-'));
  const peer = await startPeer();
  try {
    const math = await bundled(folder, 'math/cholesky.ts');
    return [
      await choleskyBench(math, peer, { size: 600, most: 8, runs: 41 }),
      await choleskyBench(math, peer, { size: 2000, most: 12, runs: 9 }),
    ];
  } finally {
    peer?.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

const width = 0.1;

/** dpotrf against ours; wrong when the determinants differ. */
async function choleskyBench({ cholesky }, peer, { size, most, runs }) {
  const name = `Cholesky of ${size} rows against LAPACK`;
  if (peer === null) return { name, skipped: noPeer };
  const points = Array.from({ length: size }, (_, n) => [12.9, 78.2, 3.7].map((k) => 15 * Math.sin(n * k)));
  const matrix = inverseDistances(points);
  const first = await peer.ask({ work: 'cholesky', name, points, width });
  const { lower, failingRow } = cholesky(matrix, size);
  const isSame = failingRow === null && Math.abs(logDeterminant(lower, size) / first.check - 1) < 1e-10;
  const { ours, peers } = await inTurns(
    {
      ours: () => timed(() => cholesky(matrix, size)),
      peers: async () => (await peer.ask({ work: 'cholesky', name })).ms,
    },
    runs,
  );
  return {
    name,
    most,
    ratio: median(ours) / median(peers),
    detail: `clock ${spread(ours)}, LAPACK ${spread(peers)}; ${peer.named}`,
    ...(isSame ? {} : { wrong: 'the determinant differs from that of LAPACK' }),
  };
}

function inverseDistances(points) {
  const size = points.length;
  const matrix = new Float64Array(size * size);
  points.forEach((a, row) => {
    points.forEach((b, column) => {
      const squared = a.reduce((sum, x, k) => sum + (x - b[k]) ** 2, width * width);
      matrix[row * size + column] = 1 / Math.sqrt(squared);
    });
  });
  return matrix;
}

function logDeterminant(lower, size) {
  let sum = 0;
  for (let row = 0; row < size; row++) sum += 2 * Math.log(lower[(row * (row + 3)) / 2]);
  return sum;
}

const noPeer = 'no python3 with scipy, so there is nothing to compare with';

/** The first python that has scipy, waiting to be asked; null: there is none. */
async function startPeer() {
  for (const python of ['/usr/bin/python3', 'python3']) {
    const child = spawn(python, [join(here, 'segments.py')], { stdio: ['pipe', 'pipe', 'ignore'] });
    child.on('error', () => {});
    const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
    const first = await lines.next();
    if (first.done) continue;
    const { numpy, scipy, blas, config, threads } = JSON.parse(first.value);
    const ask = async (asked) => {
      child.stdin.write(`${JSON.stringify(asked)}\n`);
      const answer = await lines.next();
      if (answer.done) throw new Error(`${asked.name}: the peer stopped`);
      return JSON.parse(answer.value);
    };
    const named = `numpy ${numpy}, scipy ${scipy}, BLAS ${blas} (${config}), threads ${threads ?? 'not told'}`;
    return { ask, named, stop: () => child.stdin.end() };
  }
  return null;
}

async function bundled(folder, file) {
  const outfile = join(folder, file.replace('/', '-').replace('.ts', '.mjs'));
  await build({
    entryPoints: [join(source, file)],
    bundle: true,
    format: 'esm',
    platform: 'node',
    outfile,
    logLevel: 'error',
  });
  return import(pathToFileURL(outfile).href);
}

setFlagsFromString('--expose-gc');
const giveBack = runInNewContext('gc');

/**
 * Milliseconds. Memory of the runs before is given back first, as numpy does by itself: else pages new from the system
 * would be timed on our side alone.
 */
function timed(work) {
  giveBack();
  const start = performance.now();
  work();
  return performance.now() - start;
}

function spread(values) {
  return `${median(values).toFixed(1)} ms (${Math.min(...values).toFixed(1)} to ${Math.max(...values).toFixed(1)})`;
}
