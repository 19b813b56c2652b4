import type { BondingRun } from '../bonding/bonding-of.ts';
import { type Peak, peakOf } from '../surge/peak-of.ts';
import { figureDifference, overTime, potentialFigure } from '../surge/surge-figure.ts';
import type { Interval } from '../units/interval.ts';
import type { StrikeRun } from './strike-of.ts';

/** A line that somebody has pulled, and the volts between its two sides. */
export interface StrikeGap {
  readonly line: string;
  /** How far the two sides are apart; null: nobody knows. */
  readonly gapM: Interval | null;
  readonly peak: Peak;
}

/** Of all openings both sides of which reach the soil by metal, the highest of each line. Ids in order. */
export function strikeGaps(
  { graph, site }: Pick<BondingRun, 'graph' | 'site'>,
  { network, run }: StrikeRun,
): readonly StrikeGap[] {
  const lines = new Set(site.lines.map((line) => line.id));
  const numberOf = new Map(network.nodes.map((id, i) => [id, network.at[i]!]));
  const worst = new Map<string, StrikeGap>();
  for (const key of graph.edges().sort()) {
    const { kind, part, lengthM } = graph.getEdgeAttributes(key);
    if (kind !== 'gap' || !lines.has(part)) continue;
    const [a, b] = graph.extremities(key).map((node) => numberOf.get(node) ?? -1) as [number, number];
    if (a < 0 || b < 0) continue;
    const volts = figureDifference(potentialFigure(run, a), potentialFigure(run, b));
    const gap: StrikeGap = { line: part, gapM: lengthM, peak: peakOf(run.wave.timesS, overTime(run, volts)) };
    const held = worst.get(part);
    if (held === undefined || Math.abs(gap.peak.value) > Math.abs(held.peak.value)) worst.set(part, gap);
  }
  return [...worst.values()].sort((x, y) => (x.line < y.line ? -1 : 1));
}
