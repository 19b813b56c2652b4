// A site of 300 straight pieces in 150 loops, all coupled: `strikes` works three strokes out, `failures` also the loss of each
// piece, one at a time, under the first of them. Prints figures that a run that skipped work could not have.
import { cutter } from '../../src/surge/cut-run.ts';
import { inductanceMatrix } from '../../src/surge/inductance-matrix.ts';
import { peakOf } from '../../src/surge/peak-of.ts';
import { modalFigure, overTime, potentialFigure } from '../../src/surge/surge-figure.ts';
import { surgeModes } from '../../src/surge/surge-modes.ts';
import { surgeRun } from '../../src/surge/surge-run.ts';
import { wave0p25x100, wave1x200, wave10x350 } from '../../src/surge/wave-presets.ts';
import { random } from '../network/random.ts';

const [side, pieceCount, rodCount] = [13, 300, 19];
const strokes = [
  [wave10x350(100e3), 1.75e-3],
  [wave1x200(50e3), 1e-3],
  [wave0p25x100(25e3), 0.5e-3],
];

const modes = surgeModes(site());
if (!modes.ok) throw new Error(modes.reason);
const runs = strokes.map(([wave, untilS]) => surgeRun(modes, { node: 0, wave, channelH: null }, { untilS }));
const watched = [0, 5, 80, 120, 168];
console.log(
  `${modes.network.branches.length} branches, ${modes.count} loops`,
  ...runs.flatMap((run) => watched.map((node) => peakAt(run, potentialFigure(run, node)))),
);
if (process.argv[2] === 'failures') console.log(...failures(runs[0]));

function peakAt(course, figure) {
  return peakOf(course.wave.timesS, overTime(course, figure)).value;
}

/** The worst potential of the watched nodes after each loss. */
function failures(run) {
  const cutAt = cutter(run);
  const { toEarth } = modes.loops;
  const usual = new Map(watched.map((node) => [node, modalFigure(modes, potentialFigure(run, node))]));
  return modes.network.branches.map((_, branch) => {
    const cut = cutAt([branch]);
    if (!cut.ok) return null;
    const ways = cut.modes.loops.toEarth;
    const figures = watched
      .filter((node) => ways[node] !== null)
      .map((node) => (ways[node] === toEarth[node] ? usual.get(node) : potentialFigure(cut, node)));
    return Math.max(...figures.map((figure) => Math.abs(peakAt(cut, figure))));
  });
}

/** A net of wires, its knots a little out of line, with rods at some of them. */
function site() {
  const next = random(7);
  const knots = Array.from({ length: side * side }, (_, n) => [
    5 * (n % side) + next(),
    5 * Math.floor(n / side) + next(),
    next(),
  ]);
  const right = knots.flatMap((_, n) => (n % side < side - 1 ? [[n, n + 1]] : []));
  const down = knots.flatMap((_, n) => (n + side < knots.length ? [[n, n + side]] : []));
  const ends = [...right, ...down].slice(0, pieceCount);
  const mutualH = inductanceMatrix(ends.map(([a, b]) => ({ from: knots[a], to: knots[b], radiusM: 4e-3 })));
  const lengthOf = ([a, b]) => Math.hypot(...knots[a].map((x, k) => x - knots[b][k]));
  const rods = Array.from({ length: rodCount }, (_, r) => r * 9);
  return {
    nodeCount: knots.length,
    branches: ends.map((pair, i) => ({
      from: pair[0],
      to: pair[1],
      resistanceOhm: 1.3e-3 * lengthOf(pair),
      inductanceH: mutualH[i * (ends.length + 1)],
    })),
    mutualH,
    earth: { nodes: rods, resistanceOhm: rods.map(() => 20 + 80 * next()) },
  };
}
