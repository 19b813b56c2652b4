// Soil against numpy and LAPACK on the same work, in turns in one run: Cholesky, then whole sites.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';
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
    const { cholesky } = await bundled(folder, 'math/cholesky.ts');
    const rooms = await bundledRooms(folder);
    return [
      await choleskyBench(cholesky, peer, { size: 600, most: 8, runs: 41 }),
      await choleskyBench(cholesky, peer, { size: 2000, most: 12, runs: 9 }),
      await siteBench(rooms, peer, { site: site600, most: 0.5, runs: 21 }),
      await siteBench(rooms, peer, { site: site2000, most: 0.8, runs: 7 }),
      await layersBench(rooms, { site: site600, soil: twoLayers, most: 5, runs: 15 }),
      await layersBench(rooms, { site: site2000, soil: twoLayers, most: 5, runs: 3 }),
      await layersBench(rooms, { site: site600, soil: fourLayers, most: 20, runs: 9 }),
      await layersBench(rooms, { site: site2000, soil: fourLayers, most: 20, runs: 3 }),
    ];
  } finally {
    peer?.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

const width = 0.1;
/** The peer's threads go on spinning for up to 2^26 cycles when its work is done, and would take a core from ours. */
const peerSpinsMs = 60;

/** dpotrf against ours; wrong when the determinants differ. */
async function choleskyBench(cholesky, peer, { size, most, runs }) {
  const name = `Cholesky of ${size} rows against LAPACK`;
  if (peer === null) return { name, skipped: noPeer };
  const points = Array.from({ length: size }, (_, n) => [12.9, 78.2, 3.7].map((k) => 15 * Math.sin(n * k)));
  const matrix = inverseDistances(points);
  const first = await peer.ask({ work: 'cholesky', name, points, width });
  const { lower, failingRow } = cholesky(matrix, size);
  const isSame = failingRow === null && Math.abs(logDeterminant(lower, size) / first.check - 1) < 1e-10;
  const { ours, peers } = await inTurns(
    {
      ours: async () => {
        await pause(peerSpinsMs);
        return timed(() => cholesky(matrix, size));
      },
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

const plain = { resistivityOhmM: [100], thicknessM: [] };
const twoLayers = { resistivityOhmM: [300, 50], thicknessM: [1.8] };
/** Frozen ground, the soil of a summer, clay, and stony ground below. */
const fourLayers = { resistivityOhmM: [2000, 100, 30, 300], thicknessM: [0.2, 1.6, 4.2] };

/** A ring with a radial wire and a rod at every corner; pieces of each. The foot of the first layers is a cut of the rods. */
const site600 = { corners: 24, radial: 12, side: 5, rod: 8 };
const site2000 = { corners: 40, radial: 20, side: 10, rod: 20 };

function segmentsOfSite({ segmentsOf }, { corners, radial, side, rod }, soil) {
  const at = (distance, corner, depth) => {
    const angle = (2 * Math.PI * corner) / corners;
    return [distance * Math.cos(angle), distance * Math.sin(angle), depth];
  };
  const runs = Array.from({ length: corners }, (_, k) => [
    { from: at(5, k, 0.3), to: at(25, k, 0.3), radiusM: 0.002, sheath: null },
    { from: at(5, k, 0.3), to: at(5, k + 1, 0.3), radiusM: 0.004, sheath: null },
    { from: at(5, k, 0.3), to: at(5, k, 3.3), radiusM: 0.008, sheath: null },
  ]).flat();
  const pieces = [radial, side, rod];
  return segmentsOf([{ runs }], soil, (run) => pieces[runs.indexOf(run) % 3]);
}

/** Images, matrix and solve of segments that are all joined, ohm. */
function resistance({ soilImages, influenceMatrix, factorCholesky, solveFactored }, segments, soil, fineness) {
  const factor = factorCholesky(influenceMatrix(segments, soilImages(soil, fineness)), segments.count);
  const { solution } = solveFactored(factor, new Float64Array(segments.count).fill(1));
  return 1 / solution.reduce((sum, ampere) => sum + ampere, 0);
}

/**
 * Assembly and solve in plain soil. The limit is for numpy with eight points on one segment and the potential of the other;
 * numpy with our closed forms, and with our shortcut for far pairs too, is timed in the same turns and printed. Wrong when
 * the resistances differ.
 */
async function siteBench(rooms, peer, { site, most, runs }) {
  const segments = segmentsOfSite(rooms, site, plain);
  const name = `${segments.count} segments in plain soil against numpy and LAPACK`;
  if (peer === null) return { name, skipped: noPeer };
  const ohm = resistance(rooms, segments, plain);
  const asked = { work: 'segments', name, ohmM: plain.resistivityOhmM[0] };
  const ask = (form, more = {}) => peer.ask({ ...asked, form, ...more });
  const checks = [];
  for (const form of ['points', 'closed', 'shortcut'])
    checks.push((await ask(form, { site: listsOf(segments) })).check);
  for (let n = 0; n < 6; n++) timed(() => resistance(rooms, segments, plain));
  const { ours, points, closed, shortcut } = await inTurns(
    {
      ours: async () => {
        await pause(peerSpinsMs);
        return timed(() => resistance(rooms, segments, plain));
      },
      points: async () => (await ask('points')).ms,
      closed: async () => (await ask('closed')).ms,
      shortcut: async () => (await ask('shortcut')).ms,
    },
    runs,
  );
  const against = (words, peers) => `${words} ${spread(peers)}, ratio ${(median(ours) / median(peers)).toFixed(2)}`;
  const [byPoints, byForms, byOurs] = checks;
  const isSame =
    Math.abs(ohm / byOurs - 1) < 1e-5 && Math.abs(ohm / byForms - 1) < 1e-4 && Math.abs(ohm / byPoints - 1) < 5e-3;
  return {
    name,
    most,
    ratio: median(ours) / median(points),
    detail: [
      `clock ${spread(ours)}`,
      against('numpy by points', points),
      against('by closed forms', closed),
      against('by closed forms with our shortcut', shortcut),
      peer.named,
    ].join('; '),
    ...(isSame ? {} : { wrong: `${ohm} ohm, but numpy ${checks.join(', ')} ohm` }),
  };
}

function listsOf({ middleM, along, lengthM, radiusM }) {
  const arrays = { middle: middleM, along, length: lengthM, radius: radiusM };
  return Object.fromEntries(Object.entries(arrays).map(([key, numbers]) => [key, Array.from(numbers)]));
}

/**
 * Assembly and solve in layers against plain soil, both ours. The limit is for the images that resistances of a site are
 * worked out with; the fine ones are timed in the same turns and printed.
 */
async function layersBench(rooms, { site, soil, most, runs }) {
  const segments = segmentsOfSite(rooms, site, soil);
  const inPlain = segmentsOfSite(rooms, site, plain);
  const run = (pieces, ground, fineness) => () => timed(() => resistance(rooms, pieces, ground, fineness));
  const { coarse, fine, uniform } = await inTurns(
    {
      coarse: run(segments, soil, 'coarse'),
      fine: run(segments, soil, 'fine'),
      uniform: run(inPlain, plain, 'coarse'),
    },
    runs,
  );
  return {
    name: `${segments.count} segments in ${soil.resistivityOhmM.length} layers against plain soil`,
    most,
    ratio: median(coarse) / median(uniform),
    detail: `clock ${spread(coarse)}, plain soil ${spread(uniform)}; with fine images ${spread(fine)}, ratio ${(median(fine) / median(uniform)).toFixed(2)}`,
    ...(segments.count === inPlain.count ? {} : { wrong: `${inPlain.count} segments in plain soil` }),
  };
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

/** What the benches of whole sites call, out of its rooms. */
async function bundledRooms(folder) {
  const files = ['electrodes/segments.ts', 'electrodes/influence-matrix.ts', 'soil/layer-images.ts', 'math/dense.ts'];
  const entry = join(folder, 'rooms.ts');
  writeFileSync(entry, files.map((file) => `export * from ${JSON.stringify(join(source, file))};\n`).join(''));
  return bundled(folder, entry);
}

async function bundled(folder, file) {
  const outfile = join(folder, `${basename(file, '.ts')}.mjs`);
  await build({
    entryPoints: [resolve(source, file)],
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
