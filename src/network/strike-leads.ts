import type { Site } from '../site/site.ts';
import { type Peak, peakOf } from '../surge/peak-of.ts';
import { figureDifference, overTime, potentialFigure } from '../surge/surge-figure.ts';
import { metalDistance } from './metal-distance.ts';
import type { StrikeRun } from './strike-of.ts';

/** The way of an entry panel into the soil, and the volts along it. */
export interface StrikeLead {
  readonly bar: string;
  /** What it comes to in the soil: an electrode, or a bare buried wire. */
  readonly into: string;
  readonly lengthM: number;
  /** Of the panel against the point of the soil's metal that it comes to. */
  readonly peak: Peak;
}

/** Of each entry panel, the shortest way through metal to what lies in the soil; a panel without one has none. */
export function strikeLeads({ bars }: Site, { network, run, places }: StrikeRun): readonly StrikeLead[] {
  const { surge, branches, points } = network;
  const metal = surge.branches.map(({ from, to }, i) => ({ from, to, lengthM: branches[i]!.lengthM }));
  return bars.flatMap(({ id, kind, present }) => {
    const node = kind === 'entry panel' && present === 'yes' ? places.nodeOf(id) : null;
    if (node === null) return [];
    const distanceM = metalDistance(surge.nodeCount, metal, node);
    const ends = surge.earth.nodes.map((end, i) => ({ end, into: points[i]!.part, lengthM: distanceM[end]! }));
    const [best] = ends.sort((a, b) => a.lengthM - b.lengthM || (a.into < b.into ? -1 : 1));
    if (best === undefined || best.lengthM === Number.POSITIVE_INFINITY) return [];
    const volts = figureDifference(potentialFigure(run, node), potentialFigure(run, best.end));
    return [{ bar: id, into: best.into, lengthM: best.lengthM, peak: peakOf(run.wave.timesS, overTime(run, volts)) }];
  });
}
