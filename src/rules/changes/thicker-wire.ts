import type { SiteChange } from '../../site/change.ts';
import { gaugeAreaM2 } from '../../units/wire-gauge.ts';
import { setFields } from './set-field.ts';

/** How the sizes of a clause are sold: by gauge, or by square millimetre. */
export type SizeUnits = 'awg' | 'mm2';

interface Size {
  readonly name: string;
  readonly areaM2: number;
}

const gauges: readonly Size[] = [14, 12, 10, 8, 6, 4, 2, 0, -1, -2, -3].map((n) => ({
  name: `${n > 0 ? n : `${1 - n}/0`} AWG copper`,
  areaM2: gaugeAreaM2(n),
}));
const sections: readonly Size[] = [1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120].map((mm2) => ({
  name: `${mm2} mm2 copper`,
  areaM2: mm2 * 1e-6,
}));
const sizes = { awg: gauges, mm2: sections } as const;

/** A size as printed is met by a size as printed: 21.2 mm² is 4 AWG, of 21.15. */
const printedShare = 1 - 3e-3;

/** The wire of a conductor replaced by the thinnest of copper that reaches a section; nothing where none on sale does. */
export function thickerWire(
  conductor: string,
  copperM2: number,
  units: SizeUnits,
): { readonly change?: readonly SiteChange[] } {
  const found = sizes[units].find((s) => s.areaM2 >= copperM2 * printedShare);
  return found === undefined ? {} : setFields('conductors', conductor, { wire: found.name });
}
