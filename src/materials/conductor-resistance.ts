import { exact, type Interval, mul, scale } from '../units/interval.ts';
import type { Wire } from './wire.ts';

/** Stranding adds up to 2 % (lay of the strands): ASTM B8, from memory. */
const strandingHigh = 1.02;

/**
 * DC resistance of one metre at a temperature, ohm: R = ρ20 [1 + α20 (T − 20)] / A. Stranded wire is up to 2 % above
 * solid, and wire that is not said to be one or the other may be either. null when metal or section is unknown, or when
 * the metal has no temperature coefficient and T is not 20 °C. Holds from about −60 to 200 °C (linear coefficient).
 * Sources of ρ20 and α20 stand with the metal.
 */
export function resistancePerMetre(wire: Wire, celsius = 20): Interval | null {
  const { metal, areaM2 } = wire;
  if (metal?.resistivityOhmM == null || areaM2 === null || areaM2.low <= 0) return null;
  const warm = temperatureFactor(metal.temperatureCoefficientPerK, celsius - 20);
  if (warm === null) return null;
  const ohmArea = mul(metal.resistivityOhmM, warm);
  const bare = { low: ohmArea.low / areaM2.high, high: ohmArea.high / areaM2.low };
  if (wire.form !== 'round' || wire.stranded === 'no') return bare;
  return { low: bare.low, high: bare.high * strandingHigh };
}

function temperatureFactor(coefficient: Interval | null, riseK: number): Interval | null {
  if (riseK === 0) return exact(1);
  if (coefficient === null) return null;
  const change = scale(coefficient, riseK);
  return { low: 1 + change.low, high: 1 + change.high };
}
