import type { DrilledRodShape, RodShape, RodsShape } from '../../src/electrodes/electrode.ts';
import type { ElectrodeResistance } from '../../src/electrodes/electrode-resistance.ts';
import type { SoilLayers } from '../../src/soil/layers.ts';
import { exact } from '../../src/units/interval.ts';

export const footM = 0.3048;
export const inchM = 0.0254;

/** Uniform soil. */
export const soil = (ohmM: number): SoilLayers => [{ resistivityOhmM: exact(ohmM), thicknessM: null }];

/** A rod with its top at grade. */
export const rod = (lengthM: number, diameterM: number): RodShape => ({
  kind: 'rod',
  lengthM: exact(lengthM),
  diameterM: exact(diameterM),
  topM: exact(0),
});

export const rods = (
  count: number,
  layout: RodsShape['layout'],
  spacingM: number,
  lengthM: number,
  diameterM: number,
): RodsShape => ({ ...rod(lengthM, diameterM), kind: 'rods', count, layout, spacingM: exact(spacingM), radiusM: null });

export const drilled = (lengthM: number, diameterM: number, holeM: number, backfillOhmM: number): DrilledRodShape => ({
  ...rod(lengthM, diameterM),
  kind: 'drilled rod',
  holeDiameterM: exact(holeM),
  backfillOhmM: exact(backfillOhmM),
});

export function ohmOf(resistance: ElectrodeResistance): number {
  const { ohm, missing, outOfRange } = resistance;
  if (ohm?.value == null) throw new Error(`no value: missing ${missing.join()}, out of range ${outOfRange.join()}`);
  return ohm.value;
}
