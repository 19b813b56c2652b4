import { cholesky } from '../math/cholesky.ts';
import { symmetricEigen } from '../math/symmetric-eigen.ts';
import { solveLower, solveUpper } from '../math/triangular-solve.ts';
import { checkSurgeNetwork } from './check-surge-network.ts';
import { type SignedWay, type SurgeLoops, surgeLoops } from './surge-loops.ts';
import type { RefusedSurge, SurgeNetwork } from './surge-network.ts';
import { surgeRefusal } from './surge-refusal.ts';

/**
 * A network taken apart once into modes, each of which moves by itself: with B the loops, R and L the resistances and
 * inductances of the elements, and y = W z the loop currents,
 *
 *     W' (B L B') W = diag(stored),  W' (B R B') W = diag(lost),  stored_k dz_k/dt + lost_k z_k = W' f.
 *
 * A mode that stores nothing (a loop of resistances) follows f at once; one that loses nothing rings on for ever.
 */
export interface SurgeModes {
  readonly ok: true;
  readonly network: SurgeNetwork;
  readonly loops: SurgeLoops;
  readonly count: number;
  /** Inductance and resistance of each mode, in a common measure: stored times `rateS` and lost add up to 1. */
  readonly stored: Float64Array;
  readonly lost: Float64Array;
  /** W: loop by loop, one column for each mode. */
  readonly shape: Float64Array;
}

/** Nodes without a way to earth and matrices that no metal can have are refused. See `checkSurgeNetwork` for its errors. */
export function surgeModes(network: SurgeNetwork): SurgeModes | RefusedSurge {
  checkSurgeNetwork(network);
  const loops = surgeLoops(network);
  const refused = surgeRefusal(network, loops);
  if (refused !== null) return refused;
  const count = loops.loops.length;
  const volts = new Float64Array(network.branches.length + network.earth.nodes.length);
  const resistance = loopMatrix(loops.loops, (way) => resistanceTimes(network, way, volts.fill(0)));
  const inductance = loopMatrix(loops.loops, (way) => inductanceTimes(network, way, volts.fill(0)));
  const rate = rateOf(resistance, inductance, count);
  const both = resistance.map((ohm, i) => ohm + rate * inductance[i]!);
  const { lower, failingRow } = cholesky(both, count);
  if (failingRow !== null) return ofLoop(network, loops.loops[failingRow]!);
  const { values, vectors } = symmetricEigen(whitened(lower, inductance, count), count);
  // what lies below the rounding of the largest stores nothing
  const least = count * Number.EPSILON * Math.max(0, values[count - 1] ?? 0);
  const stored = values.map((value) => (value <= 10 * least ? 0 : value));
  solveUpper(lower, count, vectors);
  return {
    ok: true,
    network,
    loops,
    count,
    stored,
    lost: stored.map((value) => Math.max(0, 1 - rate * value)),
    shape: vectors,
  };
}

/** A rate at which resistances and inductances weigh alike, per second. */
function rateOf(resistance: Float64Array, inductance: Float64Array, count: number): number {
  let [ohm, henry] = [0, 0];
  for (let i = 0; i < count; i++)
    [ohm, henry] = [ohm + resistance[i * (count + 1)]!, henry + inductance[i * (count + 1)]!];
  return henry > 0 && ohm > 0 ? ohm / henry : usualRatePerS;
}

const usualRatePerS = 1e6;

/** C^-1 A C^-T, made symmetric. */
function whitened(lower: Float64Array, matrix: Float64Array, count: number): Float64Array {
  const half = Float64Array.from(matrix);
  solveLower(lower, count, half);
  const turned = transposed(half, count);
  solveLower(lower, count, turned);
  const other = transposed(turned, count);
  return turned.map((value, i) => (value + other[i]!) / 2);
}

function transposed(matrix: Float64Array, count: number): Float64Array {
  const turned = new Float64Array(count * count);
  for (let i = 0; i < count; i++) for (let j = 0; j < count; j++) turned[j * count + i] = matrix[i * count + j]!;
  return turned;
}

/** B X B' for a matrix X of elements, by what X makes of each loop. */
function loopMatrix(loops: readonly SignedWay[], times: (way: SignedWay) => Float64Array): Float64Array {
  const count = loops.length;
  const matrix = new Float64Array(count * count);
  loops.forEach((way, row) => {
    const drop = times(way);
    for (let column = 0; column <= row; column++) {
      const sum = along(loops[column]!, drop);
      matrix[row * count + column] = sum;
      matrix[column * count + row] = sum;
    }
  });
  return matrix;
}

/** Sum of a figure of the elements along a way. */
export function along({ elements, signs }: SignedWay, figures: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < elements.length; i++) sum += signs[i]! * figures[elements[i]!]!;
  return sum;
}

/** What each mode adds to a sum over the elements, each times its weight. Added to `sum`. */
export function byModes(
  { loops, count, shape }: SurgeModes,
  weights: Float64Array,
  sum: Float64Array = new Float64Array(count),
): Float64Array {
  for (let row = 0; row < count; row++) {
    const weight = along(loops.loops[row]!, weights);
    if (weight !== 0) addRow(sum, shape, row * count, weight);
  }
  return sum;
}

function addRow(sum: Float64Array, shape: Float64Array, from: number, weight: number): void {
  for (let k = 0; k < sum.length; k++) sum[k] = sum[k]! + shape[from + k]! * weight;
}

/** Volts over every element while 1 A runs along a way: its resistances. Added to `volts`. */
export function resistanceTimes(
  { branches, earth }: SurgeNetwork,
  { elements, signs }: SignedWay,
  volts: Float64Array = new Float64Array(branches.length + earth.nodes.length),
): Float64Array {
  for (let i = 0; i < elements.length; i++) {
    const [element, sign] = [elements[i]!, signs[i]!];
    if (element < branches.length) volts[element] = volts[element]! + sign * branches[element]!.resistanceOhm;
    else addEarth(volts, earth, element - branches.length, sign, branches.length);
  }
  return volts;
}

function addEarth(
  volts: Float64Array,
  { resistanceOhm }: SurgeNetwork['earth'],
  electrode: number,
  sign: number,
  first: number,
): void {
  const row = resistanceOhm[electrode]!;
  if (typeof row === 'number') volts[first + electrode] = volts[first + electrode]! + sign * row;
  else for (let j = 0; j < row.length; j++) volts[first + j] = volts[first + j]! + sign * row[j]!;
}

/** The same for a current that rises by 1 A/s: its inductances. */
export function inductanceTimes(
  { branches, mutualH, earth }: SurgeNetwork,
  { elements, signs }: SignedWay,
  volts: Float64Array = new Float64Array(branches.length + earth.nodes.length),
): Float64Array {
  const count = branches.length;
  for (let i = 0; i < elements.length; i++) {
    const [element, sign] = [elements[i]!, signs[i]!];
    if (element >= count) continue;
    if (mutualH === null) volts[element] = volts[element]! + sign * branches[element]!.inductanceH;
    else for (let j = 0; j < count; j++) volts[j] = volts[j]! + sign * mutualH[element * count + j]!;
  }
  return volts;
}

/** Metal is sound by itself, yet a loop of it is next to nothing: pieces of it lie in one another. */
function ofLoop({ branches }: SurgeNetwork, { elements }: SignedWay): RefusedSurge {
  const inLoop = Array.from(elements).filter((element) => element < branches.length);
  return { ok: false, reason: 'inductance not positive definite', nodes: [], branches: inLoop };
}
