import { type ScaledSoil, scaledSoils } from '../electrodes/scaled-soil.ts';
import type { EnclosingSoils } from '../electrodes/solved-resistance.ts';
import type { LayeredSoil } from '../soil/layered-soil.ts';
import type { GroundSoil } from './ground-soil.ts';

/** The plain soils of a site's ground ready to be solved in; those that differ by a factor alone share their images. */
export function enclosingSoils(soil: GroundSoil | null): EnclosingSoils | null {
  if (soil === null) return null;
  const { low, likely, high } = soil.profile;
  const scaled = scaledSoils();
  const of = (plain: LayeredSoil | null): ScaledSoil | null => (plain === null ? null : scaled(plain));
  return { low: of(low), likely: of(likely), high: of(high) };
}
