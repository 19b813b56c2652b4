import type { SurgeCourse } from './surge-course.ts';
import { noWay, surgeDrive } from './surge-drive.ts';
import { overTime, potentialFigure } from './surge-figure.ts';
import { along, inductanceTimes, resistanceTimes } from './surge-modes.ts';

/**
 * What went in at the struck node, less heat in all resistances, energy of the field and what the channel's own field took, over
 * what went in. Simpson's rule over pairs of steps. For a course that nothing but its source drives.
 */
export function energyShare(course: SurgeCourse): number {
  const { stepS, currentA } = course.wave;
  const { node } = course.source;
  const powers = powersOf(course);
  if (node === null) return inducedShare(course, powers);
  const volts = overTime(course, potentialFigure(course, node));
  for (let t = 0; t < volts.length; t++) volts[t] = volts[t]! * currentA[t]!;
  const put = simpson(stepS, volts);
  const field = powers.field.at(-1)! - powers.field[0]!;
  return put === 0 ? 0 : Math.abs(put - simpson(stepS, powers.spent) - field) / put;
}

/** Of a source that only induces: what its field gave less heat and field, over these two. */
function inducedShare({ wave: { stepS } }: SurgeCourse, { spent, heat, field }: Powers): number {
  const held = field.at(-1)! - field[0]!;
  const kept = simpson(stepS, heat) + held;
  return kept === 0 ? 0 : Math.abs(simpson(stepS, spent) + held) / kept;
}

function simpson(stepS: Float64Array, figures: Float64Array): number {
  let sum = 0;
  for (let t = 2; t < figures.length; t += 2)
    sum += (stepS[t]! / 3) * (figures[t - 2]! + 4 * figures[t - 1]! + figures[t]!);
  return sum;
}

interface Powers {
  /** Heat and what the channel takes, watt. */
  readonly spent: Float64Array;
  /** Heat alone, of the modes. */
  readonly heat: Float64Array;
  /** Energy of the field, joule. */
  readonly field: Float64Array;
}

/** By the source's own way through the tree, by the modes, and by both together. */
function powersOf({ modes, source, drive, wave, z }: SurgeCourse): Powers {
  const { count, stored, lost, network } = modes;
  const metal = surgeDrive(modes, { node: source.node, channelH: null });
  const way = source.node === null ? noWay : modes.loops.toEarth[source.node]!;
  const ohm = along(way, resistanceTimes(network, way));
  const henry = along(way, inductanceTimes(network, way));
  const channelH = drive.ownHenry === null ? 0 : along(way, drive.ownHenry);
  const byChannel = drive.bySlope.map((all, k) => all - metal.bySlope[k]!);
  const [spent, heatOnly, field] = [0, 1, 2].map(() => new Float64Array(wave.timesS.length)) as Rows;
  const sums = new Float64Array(5);
  for (let t = 0; t < spent.length; t++) {
    const [i, rise] = [wave.currentA[t]!, wave.slopeAPerS[t]!];
    addUp(sums, [metal.byCurrent, metal.bySlope, byChannel, lost, stored], z, t * count);
    const [byOhm, byHenry, byField, heat, held] = [sums[0]!, sums[1]!, sums[2]!, sums[3]!, sums[4]!];
    heatOnly[t] = heat;
    spent[t] = i * (ohm * i + 2 * byOhm) + heat + rise * (channelH * i + byField);
    field[t] = i * ((henry * i) / 2 + byHenry) + held / 2;
  }
  return { spent, heat: heatOnly, field };
}

type Rows = [Float64Array, Float64Array, Float64Array];
type Weights = readonly [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];

/** Sums over the modes: three by their states, two by the squares of these. */
function addUp(sums: Float64Array, [a, b, c, d, e]: Weights, z: Float64Array, row: number): void {
  let [first, second, third, fourth, fifth] = [0, 0, 0, 0, 0];
  for (let k = 0; k < a.length; k++) {
    const state = z[row + k]!;
    first += a[k]! * state;
    second += b[k]! * state;
    third += c[k]! * state;
    fourth += d[k]! * state * state;
    fifth += e[k]! * state * state;
  }
  sums[0] = first;
  sums[1] = second;
  sums[2] = third;
  sums[3] = fourth;
  sums[4] = fifth;
}
