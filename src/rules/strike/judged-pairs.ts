import type { Facts } from '../../facts/facts.ts';

type Difference = Facts['strike']['differences'][number];

/** What the insulation of usual household kit stands as an impulse: overvoltage category II at 230/400 V (IEC 60664-1, from memory). */
export const withstandV = 2500;

/** A strike is worked out only where there is something to strike and something to hold together. */
export function canJudgePairs({ supports, antennas, equipment, bars }: Facts['site']): boolean {
  return supports.length + antennas.length > 0 && equipment.length + bars.length >= 2;
}

/** Boxes that do not stand on a support: what does goes up with it, and no bar holds it to the house. */
export function judgedBoxes({ supports, equipment }: Facts['site']): readonly string[] {
  const ids = new Set(supports.map((support) => support.id));
  return equipment.filter((e) => !ids.has(e.on?.part ?? '')).map((e) => e.id);
}

/** Of those and the bars, the pairs that a signal line joins or a person reaches, with their volts. */
export function judgedPairs({ differences }: Facts['strike'], site: Facts['site']): readonly Difference[] {
  const isSignal = (line: string | null) => site.lines.find((l) => l.id === line)?.kind !== 'mains';
  const touched = new Set([...judgedBoxes(site), ...site.bars.map((bar) => bar.id)]);
  return differences.filter(
    ({ pair: { a, b, why, by } }) =>
      touched.has(a) && touched.has(b) && (why === 'reach' || (why === 'line' && isSignal(by))),
  );
}
