import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Interval } from '../../units/interval.ts';
import type { LightningSystem } from '../lightning/lightning-system.ts';

/** Down conductors, and what lands on an air terminal. */
export function lightningMains(
  system: LightningSystem,
  conductors: readonly ConductorFacts[],
): readonly ConductorFacts[] {
  const terminals = new Set(system.terminals.map((t) => t.id));
  return conductors.filter(
    (c) => c.role === 'down conductor' || [...c.ends, ...c.passes].some((id) => id !== null && terminals.has(id)),
  );
}

/** Height of the tallest building or air terminal; null where one is not known. */
export function structureHeight({ terminals }: LightningSystem, { site }: Pick<Facts, 'site'>): Interval | null {
  const heights = [...site.buildings, ...terminals].map((b) => b.heightM);
  if (heights.length === 0 || heights.includes(null)) return null;
  return { low: Math.max(...heights.map((h) => h!.low)), high: Math.max(...heights.map((h) => h!.high)) };
}
