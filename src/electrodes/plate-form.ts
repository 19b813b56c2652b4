import { type ClosedForm, nothingInside, notPositive } from './closed-form.ts';
import type { PlateShape } from './electrode.ts';
import { plate, plateRadiusM } from './plate.ts';

/**
 * A plate, by one formula at every depth: Dwight's series for deep plates are nearer, but a range that reaches across the
 * depth where they begin would have bounds that leave its own cases out.
 */
export function plateForm({ widthM, heightM, depthM, stands }: PlateShape): ClosedForm {
  return {
    formula: 'rho / (8 r) (1 + r / (2.5 h + r)), r = sqrt(area / pi)',
    source: { document: 'BS 7430', edition: '2011', clause: '9.5.2', provenance: 'memory' },
    errorShare: { low: -0.035, high: 0.002 },
    figures: { widthM, heightM, depthM },
    alsoMissing: stands === null ? ['stands'] : [],
    outOfRange: (f) => {
      const wrong = notPositive(f, ['depthM']);
      if (wrong.length > 0) return wrong;
      if (Math.max(f.widthM!, f.heightM!) > 4 * Math.min(f.widthM!, f.heightM!)) return ['widthM', 'heightM'];
      return stands === 'on edge' && f.depthM! < f.heightM! / 2 ? ['depthM'] : [];
    },
    perOhmM: (f) => plate(plateRadiusM(f.widthM!, f.heightM!), f.depthM!),
    insideOhm: nothingInside,
    spanM: (f) => {
      const halfM = stands === 'on edge' ? f.heightM! / 2 : 0;
      return [f.depthM! - halfM, f.depthM! + halfM];
    },
    extentM: (f) => Math.max(f.widthM!, f.heightM!),
  };
}
