import { factorLu, solveFactored } from '../math/dense.ts';
import type { DeviceVolts } from './device.ts';

/** What is asked of one step: volts over the ports with nothing drawn, what 1 A more makes of them, and what devices say. */
export interface PortsAsked {
  /** Port by port, the three Radau points of each. */
  readonly openV: Float64Array;
  /** Row by row, in the same order. */
  readonly ohm: Float64Array;
  readonly voltsOf: (port: number, currentA: number) => DeviceVolts;
  /** Currents to begin with. */
  readonly guessA: Float64Array;
}

/**
 * Currents at which the network and the devices have the same volts, by Newton's method, each correction halved until it does
 * better; null: it finds none (a shorter step will).
 */
export function portCurrents({ openV, ohm, voltsOf, guessA }: PortsAsked): Float64Array | null {
  const size = openV.length;
  const scale = Math.max(1, ...openV.map(Math.abs));
  const gaps = (currents: Float64Array): Float64Array =>
    currents.map((current, i) => {
      let volts = openV[i]! - voltsOf(Math.floor(i / 3), current).volts;
      for (let j = 0; j < size; j++) volts += ohm[i * size + j]! * currents[j]!;
      return volts;
    });
  let currents = guessA;
  let gap = gaps(currents);
  for (let turn = 0; turn < mostTurns; turn++) {
    if (largest(gap) <= closeShare * scale) return currents;
    const slopes = ohm.slice();
    for (let i = 0; i < size; i++) {
      const at = i * (size + 1);
      slopes[at] = slopes[at]! - voltsOf(Math.floor(i / 3), currents[i]!).slopeOhm;
    }
    const factor = factorLu(slopes, size);
    if (!factor.ok) return null;
    const correction = solveFactored(factor, gap).solution;
    const better = halved(currents, correction, gaps, largest(gap));
    if (better === null) return largest(gap) <= enoughShare * scale ? currents : null;
    currents = better;
    gap = gaps(currents);
  }
  return null;
}

const mostTurns = 60;
/** Of the open volts: where it stops, and what will do if no correction betters it. */
const closeShare = 1e-10;
const enoughShare = 1e-6;

function halved(
  currents: Float64Array,
  correction: Float64Array,
  gaps: (currents: Float64Array) => Float64Array,
  most: number,
): Float64Array | null {
  for (let share = 1; share > 1e-6; share /= 2) {
    const next = currents.map((current, i) => current - share * correction[i]!);
    if (largest(gaps(next)) < most) return next;
  }
  return null;
}

function largest(figures: Float64Array): number {
  return figures.reduce((most, figure) => Math.max(most, Math.abs(figure)), 0);
}
