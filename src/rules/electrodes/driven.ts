import type { ElectrodeFacts } from '../../facts/facts.ts';

/** Electrodes driven into the soil that the owner answers for. */
export function drivenRods(electrodes: readonly ElectrodeFacts[]): readonly ElectrodeFacts[] {
  return electrodes.filter(
    (e) => ['rod', 'rods', 'pipe'].includes(e.part.kind) && e.part.owner !== 'utility' && e.part.present !== 'no',
  );
}

/** A limit as printed is met by a figure as printed: 8 ft typed in metres to three digits is no breach. */
export const printedShare = 1 - 2e-3;

/** What the clauses name together: rods, pipes and plates. */
export function rodsPipesPlates(electrodes: readonly ElectrodeFacts[]): readonly ElectrodeFacts[] {
  const plates = electrodes.filter(
    (e) => e.part.kind === 'plate' && e.part.owner !== 'utility' && e.part.present !== 'no',
  );
  return [...drivenRods(electrodes), ...plates];
}
