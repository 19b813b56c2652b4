import type { ExtendedNumber } from '../math/conductance-graph.ts';
import { DoubleDouble } from '../math/double-double.ts';
import { extendedInverse } from '../math/extended-inverse.ts';
import { type Earth, mutualOhm, ownResistances } from './network.ts';

/**
 * Electrodes that feel each other through the soil, and the inverse of their matrix row by row: I = G V, in double-double.
 * An electrode that feels no other is a block of one. Electrodes of 0 ohm or Infinity are in no block.
 */
export interface EarthBlock {
  readonly electrodes: readonly number[];
  readonly high: Float64Array;
  readonly low: Float64Array;
}

/** The earth matrix is not positive definite: these two electrodes are said to be nearer than they can be. */
export interface RefusedEarth {
  readonly ok: false;
  readonly reason: 'earth-not-positive-definite';
  readonly electrodes: readonly [number, number];
}

export type EarthBlocks = { readonly ok: true; readonly blocks: readonly EarthBlock[] } | RefusedEarth;

/** Takes the earth matrix apart into what is coupled, and inverts each part. Meant for some hundred coupled electrodes. */
export function earthBlocks(earth: Earth): EarthBlocks {
  const blocks: EarthBlock[] = [];
  const own = ownResistances(earth);
  for (const electrodes of coupledGroups(earth, own)) {
    const size = electrodes.length;
    const matrix = new Float64Array(size * size);
    for (const [row, i] of electrodes.entries()) {
      for (const [column, j] of electrodes.entries()) {
        matrix[row * size + column] = i === j ? own[i]! : mutualOhm(earth, Math.max(i, j), Math.min(i, j));
      }
    }
    const block = size === 1 && own[electrodes[0]!]! > 0 ? single(own[electrodes[0]!]!) : extendedInverse(matrix, size);
    if (!block.ok) return refuse(electrodes, block.failingRow, matrix);
    blocks.push({ electrodes, high: block.high, low: block.low });
  }
  return { ok: true, blocks };
}

/** 1 / r in double-double. */
export function conductance(resistanceOhm: number): ExtendedNumber {
  const { high, low } = new DoubleDouble().set(1).divide(resistanceOhm);
  return { high, low };
}

function single(resistanceOhm: number): { readonly ok: true; readonly high: Float64Array; readonly low: Float64Array } {
  const { high, low } = conductance(resistanceOhm);
  return { ok: true, high: Float64Array.of(high), low: Float64Array.of(low) };
}

function coupledGroups(earth: Earth, own: readonly number[]): readonly (readonly number[])[] {
  const isMatrix = earth.resistanceOhm.some((row) => typeof row !== 'number');
  const present = own.flatMap((ohm, i) => (ohm === Infinity ? [] : [i]));
  const isUsed = new Uint8Array(own.length);
  const groups: number[][] = [];
  for (const first of present) {
    if (isUsed[first] === 1) continue;
    isUsed[first] = 1;
    const group = [first];
    for (let at = 0; isMatrix && at < group.length; at++) {
      for (const next of present) {
        if (isUsed[next] === 1 || mutualOhm(earth, group[at]!, next) === 0) continue;
        isUsed[next] = 1;
        group.push(next);
      }
    }
    if (group.length > 1 || own[first]! > 0) groups.push(group.sort((a, b) => a - b));
  }
  return groups;
}

/** The electrode that fails and, of those before it, the one it is said to feel most. */
function refuse(electrodes: readonly number[], row: number, matrix: Float64Array): RefusedEarth {
  const size = electrodes.length;
  const coupling = (other: number): number =>
    Math.abs(matrix[row * size + other]!) / Math.sqrt(Math.abs(matrix[other * size + other]!));
  let worst = row === 0 ? Math.min(1, size - 1) : 0;
  for (let other = 0; other < row; other++) if (coupling(other) > coupling(worst)) worst = other;
  const [a, b] = [electrodes[Math.min(row, worst)]!, electrodes[Math.max(row, worst)]!];
  return { ok: false, reason: 'earth-not-positive-definite', electrodes: [a, b] };
}
