// Strokes into networks: seven small ones against ngspice at the same accuracy, process start left out on both sides; a large
// one, and its one-failure-at-a-time, in bare nodes.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { childTime } from './child-time.mjs';
import { inTurns, median } from './in-turns.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const tests = join(here, '..');
const SHARE_OF_NGSPICE = 0.1;
const STRIKES = 12;
const FAILURES = 9;

export async function strikeBenches({ rounds }) {
  const folder = mkdtempSync(join(tmpdir(), 'strike-'));
  try {
    return [...(await smallBenches(folder, rounds)), ...(await largeBenches(folder, rounds))];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function largeBenches(folder, rounds) {
  const child = join(folder, 'child.mjs');
  await bundle(join(here, 'strike-child.mjs'), child);
  const run = (...args) => childTime(process.execPath, args);
  const times = await inTurns(
    { bare: () => run('-e', '0'), strikes: () => run(child, 'strikes'), failures: () => run(child, 'failures') },
    rounds,
  );
  const own = (name) => median(times[name].map((t) => t.cpuMs ?? t.wallMs));
  const detail = `bare node ${own('bare').toFixed(0)} ms, three strikes ${own('strikes').toFixed(0)} ms, with 300 losses ${own('failures').toFixed(0)} ms (processor time)`;
  return [
    {
      name: 'three strikes into 300 pieces in 150 loops, in bare nodes',
      ratio: own('strikes') / own('bare'),
      most: STRIKES,
      detail,
    },
    {
      name: 'the loss of each of 300 pieces under one stroke, in bare nodes',
      ratio: (own('failures') - own('strikes')) / own('bare'),
      most: FAILURES,
      detail,
    },
  ];
}

async function smallBenches(folder, rounds) {
  const rooms = await bundledRooms(folder);
  const ngspice = rooms.findNgspice('the seven networks timed against ngspice');
  const results = [];
  for (const found of rooms.lightningCases) results.push(await smallBench(rooms, ngspice, folder, rounds, found));
  return results;
}

/** Repeats within one process, so that its start falls out of the difference to a single one. */
const OURS = 2000;
const PEERS = 100;

async function smallBench(rooms, ngspice, folder, rounds, found) {
  const name = `${found.title} against ngspice`;
  if (ngspice === null) return { name, skipped: 'no ngspice, so there is nothing to compare with' };
  const made = rooms.caseNetwork(found);
  const asked = found.peaks.split('; ').map((text) => text.split(' '));
  const fineness = finenessOfOurs(rooms, found, made, asked);
  if (fineness === null) return { name, most: SHARE_OF_NGSPICE, ratio: NaN, wrong: 'we are not as accurate as asked' };
  const settings = settingsOfNgspice(rooms, ngspice, found, made, asked);
  if (settings === null) return { name, skipped: 'ngspice does not come to the same accuracy with 12800 steps' };
  const { steps, tolerance } = settings;
  const [once, often] = [1, 1 + PEERS].map((times) => {
    const path = join(folder, `often-${times}.cir`);
    writeFileSync(path, repeated(netlistOf(rooms, found, made, settings), times));
    return path;
  });
  const ready = readyFor(rooms, found, made, asked, fineness);
  const cpu = (path) => childTime('ngspice', ['-n', '-b', path]).cpuMs;
  const { own, peer } = await inTurns(
    {
      own: () => timed(() => ours(rooms, made, ready), OURS),
      peer: () => (cpu(often) - cpu(once)) / PEERS,
    },
    rounds,
  );
  return {
    name,
    ratio: median(own) / median(peer),
    most: SHARE_OF_NGSPICE,
    detail: [
      `processor time ${median(own).toFixed(3)} ms at ${fineness} of the usual steps (${OURS} repeats)`,
      `ngspice with ${tolerance}, ${steps} steps at most ${((found.windowUs * 1e3) / steps).toFixed(2)} ns long ${median(peer).toFixed(2)} ms (${PEERS} repeats)`,
    ].join('; '),
  };
}

/** The coarsest steps of ours that are as accurate as asked; null: not even the usual ones. */
function finenessOfOurs(rooms, found, made, asked) {
  const isFine = (fineness) => {
    const { timesS, series } = ours(rooms, made, readyFor(rooms, found, made, asked, fineness));
    return asked.every(([, kilo, us], i) => isRight(rooms.peakOf(timesS, series[i]), kilo, us));
  };
  return [0.25, 0.35, 0.5, 0.7, 1].find(isFine) ?? null;
}

/** What a netlist says too: the source, the time, what is to be kept. */
function readyFor({ caseWave }, found, { nodes, names }, asked, fineness) {
  const source = { node: nodes.indexOf(found.into), wave: caseWave(found), channelH: null };
  const wanted = asked.map(([what]) => {
    const inside = what.slice(2, -1);
    if (what[0] === 'i') return { branch: names.indexOf(inside) };
    const [from, to] = inside.split(',').map((node) => nodes.indexOf(node));
    return { from, to };
  });
  return { source, until: { untilS: found.windowUs * 1e-6, fineness }, wanted };
}

/** Network taken apart and stepped, and all that is asked for over time. */
function ours(rooms, { network }, { source, until, wanted }) {
  const { surgeModes, surgeRun, overTime, potentialFigure, currentFigure, figureDifference } = rooms;
  const run = surgeRun(surgeModes(network), source, until);
  const elements = network.branches.length + network.earth.nodes.length;
  const series = wanted.map(({ branch, from, to }) => {
    if (branch !== undefined) {
      const weights = new Float64Array(elements);
      weights[branch] = 1;
      return overTime(run, currentFigure(run, weights));
    }
    const figure = potentialFigure(run, from);
    return overTime(run, to === undefined ? figure : figureDifference(figure, potentialFigure(run, to)));
  });
  return { timesS: run.wave.timesS, series };
}

/** A thousandth of the peak; a nanosecond and half a printed digit of its time. */
function isRight({ value, atS }, kilo, us) {
  const halfDigit = 0.5 * 10 ** -(us.split('.')[1]?.length ?? 0);
  return Math.abs(value / (Number(kilo) * 1e3) - 1) < 1e-3 && Math.abs(atS * 1e6 - Number(us)) < 1e-3 + halfDigit;
}

/** The loosest tolerance of two with the fewest steps, doubled from 100 on, at which ngspice is as accurate; null: none. */
function settingsOfNgspice(rooms, ngspice, found, made, asked) {
  for (let steps = 100; steps <= 12_800; steps *= 2) {
    for (const tolerance of ['reltol=1e-3', 'reltol=1e-6']) {
      const answer = ngspice.run(netlistOf(rooms, found, made, { steps, tolerance }));
      const peaks = asked.map(([what]) => rooms.peakOf(answer.get('time'), seriesOf(rooms, made, answer, what)));
      if (asked.every(([, kilo, us], i) => isRight(peaks[i], kilo, us))) return { steps, tolerance };
    }
  }
  return null;
}

function seriesOf({ nodeVector, branchVector }, { nodes, names }, answer, what) {
  const inside = what.slice(2, -1);
  const named = { name: 'a' };
  if (what[0] === 'i') return answer.get(branchVector(named, names.indexOf(inside)));
  const [a, b] = inside.split(',').map((node) => answer.get(nodeVector(named, nodes.indexOf(node))));
  return b === undefined ? a : a.map((volt, t) => volt - b[t]);
}

/** Least currents and volts are those of a stroke. */
function netlistOf({ ngspiceNetlist, caseWave }, found, { network, nodes }, { steps, tolerance }) {
  const untilS = found.windowUs * 1e-6;
  const named = { name: 'a', network, into: nodes.indexOf(found.into) };
  return ngspiceNetlist(
    [named],
    caseWave(found),
    untilS,
    untilS / steps,
    `${tolerance} abstol=1e-3 vntol=1e-3 chgtol=1e-9`,
  );
}

function repeated(netlist, times) {
  const run = /^\.tran (.*)$/m.exec(netlist)[1];
  const control = ['.control', `repeat ${times}`, `tran ${run}`, 'destroy all', 'end', 'quit', '.endc'].join('\n');
  return netlist.replace(/^\.tran .*$/m, control);
}

/** Processor time of one of many, milliseconds. */
function timed(work, times) {
  const before = process.cpuUsage();
  for (let n = 0; n < times; n++) work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e3 / times;
}

async function bundledRooms(folder) {
  const files = [
    'tests/reference/ngspice.ts',
    'tests/reference/ngspice-netlist.ts',
    'tests/surge/lightning-cases.ts',
    'tests/surge/case-network.ts',
    'src/surge/surge-modes.ts',
    'src/surge/surge-run.ts',
    'src/surge/surge-figure.ts',
    'src/surge/peak-of.ts',
  ];
  const entry = join(folder, 'rooms.ts');
  writeFileSync(entry, files.map((file) => `export * from ${JSON.stringify(join(tests, '..', file))};\n`).join(''));
  const outfile = join(folder, 'rooms.mjs');
  await bundle(entry, outfile);
  return import(pathToFileURL(outfile).href);
}

function bundle(entry, outfile) {
  return build({ entryPoints: [entry], bundle: true, format: 'esm', platform: 'node', outfile, logLevel: 'error' });
}
