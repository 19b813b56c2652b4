import type { ElectrodeFacts } from '../../facts/facts.ts';
import type { Electrode } from '../../site/site.ts';
import { add, type Interval } from '../../units/interval.ts';

/** Electrodes driven into the soil that the owner answers for. */
export function drivenRods(electrodes: readonly ElectrodeFacts[]): readonly ElectrodeFacts[] {
  return electrodes.filter(
    (e) => ['rod', 'rods', 'pipe'].includes(e.part.kind) && e.part.owner !== 'utility' && e.part.present !== 'no',
  );
}

/** A limit as printed is met by a figure as printed: 8 ft typed in metres to three digits is no breach. */
export const printedShare = 1 - 2e-3;

/** Length of a rod in soil, metres: what stands out of the ground (`top:` with a minus) touches none. null: unknown. */
export function lengthInSoil({ lengthM, topM }: Pick<Electrode, 'lengthM' | 'topM'>): Interval | null {
  if (lengthM === null || topM === null) return lengthM;
  return add(lengthM, { low: Math.min(0, topM.low), high: Math.min(0, topM.high) });
}

/** How deep its top lies, as its owner says: where nobody said it the reader takes it at grade. Metres; null: unknown. */
export function saidTopM({ topM, typed }: Pick<Electrode, 'topM' | 'typed'>): Interval | null {
  return typed.top === undefined ? null : topM;
}

/** What the clauses name together: rods, pipes and plates. */
export function rodsPipesPlates(electrodes: readonly ElectrodeFacts[]): readonly ElectrodeFacts[] {
  const plates = electrodes.filter(
    (e) => e.part.kind === 'plate' && e.part.owner !== 'utility' && e.part.present !== 'no',
  );
  return [...drivenRods(electrodes), ...plates];
}
