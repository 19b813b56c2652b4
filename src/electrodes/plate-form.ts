import { type ClosedForm, dwight, nothingInside, notPositive } from './closed-form.ts';
import type { PlateShape } from './electrode.ts';
import { deepFlatPlate, deepPlateRadii, deepUprightPlate, plate, plateRadiusM } from './plate.ts';

/** A plate: by the series for deep ones where the whole range is deep. */
export function plateForm({ widthM, heightM, depthM, stands }: PlateShape): ClosedForm {
  const isDeep =
    widthM !== null &&
    heightM !== null &&
    depthM !== null &&
    depthM.low >= deepPlateRadii * plateRadiusM(widthM.high, heightM.high);
  const deep = stands === 'flat' ? deepFlatPlate : deepUprightPlate;
  const [flat, upright] = [
    'rho / (8 r) + rho / (8 pi h) (1 - 7 r^2 / (48 h^2) + ...)',
    'rho / (8 r) + rho / (8 pi h) (1 + 7 r^2 / (96 h^2) + ...)',
  ];
  return {
    formula: isDeep ? (stands === 'flat' ? flat : upright) : 'rho / (8 r) (1 + r / (2.5 h + r)), r = sqrt(area / pi)',
    source: isDeep ? dwight : { document: 'BS 7430', edition: '2011', clause: '9.5.2', provenance: 'memory' },
    errorShare: { low: -0.035, high: 0.002 },
    figures: { widthM, heightM, depthM },
    alsoMissing: stands === null ? ['stands'] : [],
    outOfRange: (f) => {
      const wrong = notPositive(f, ['depthM']);
      if (wrong.length > 0) return wrong;
      if (Math.max(f.widthM!, f.heightM!) > 4 * Math.min(f.widthM!, f.heightM!)) return ['widthM', 'heightM'];
      return stands === 'on edge' && f.depthM! < f.heightM! / 2 ? ['depthM'] : [];
    },
    perOhmM: (f) => (isDeep ? deep : plate)(plateRadiusM(f.widthM!, f.heightM!), f.depthM!),
    insideOhm: nothingInside,
    spanM: (f) => {
      const halfM = stands === 'on edge' ? f.heightM! / 2 : 0;
      return [f.depthM! - halfM, f.depthM! + halfM];
    },
    extentM: (f) => Math.max(f.widthM!, f.heightM!),
  };
}
