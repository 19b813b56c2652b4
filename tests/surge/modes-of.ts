import { peakOf } from '../../src/surge/peak-of.ts';
import { overTime, potentialFigure } from '../../src/surge/surge-figure.ts';
import { type SurgeModes, surgeModes } from '../../src/surge/surge-modes.ts';
import type { SurgeNetwork } from '../../src/surge/surge-network.ts';
import { surgeRun } from '../../src/surge/surge-run.ts';
import type { Wave } from '../../src/surge/wave.ts';

/** Modes of a network that is sound; the test fails where it is refused. */
export function modesOf(network: SurgeNetwork): SurgeModes {
  const modes = surgeModes(network);
  if (!modes.ok) throw new Error(modes.reason);
  return modes;
}

/** Peak of the struck node's potential, volts. */
export function peakPotential(network: SurgeNetwork, node: number, wave: Wave, untilS: number): number {
  const run = surgeRun(modesOf(network), { node, wave, channelH: null }, { untilS });
  return peakOf(run.wave.timesS, overTime(run, potentialFigure(run, node))).value;
}
