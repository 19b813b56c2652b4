import { type ClosedForm, type Figures, notPositive, shellOhm } from './closed-form.ts';
import type { EncasedShape } from './electrode.ts';
import { straightWire } from './level-wire.ts';

/** Metal in a beam of concrete. */
export function encasedForm(shape: EncasedShape): ClosedForm {
  const { lengthM, widthM, heightM, topM, concreteOhmM, coreDiameterM } = shape;
  const beamM = (f: Figures): number => (f.widthM! + f.heightM!) / 2;
  return {
    formula: 'a wire as thick as the beam, D = (width + height) / 2, and rho_c ln(D / d) / (2 pi L) inside it',
    source: { document: 'IEEE Std 80', edition: '2000', clause: '14.6', provenance: 'memory' },
    errorShare: null,
    figures: { lengthM, widthM, heightM, topM, concreteOhmM, coreDiameterM },
    alsoMissing: [],
    outOfRange: (f) => {
      const wrong = notPositive(f, ['topM', 'concreteOhmM']);
      if (wrong.length > 0) return wrong;
      if (f.coreDiameterM! > Math.min(f.widthM!, f.heightM!)) return ['coreDiameterM'];
      return f.lengthM! < 2 * beamM(f) ? ['lengthM', 'widthM', 'heightM'] : [];
    },
    perOhmM: (f) => straightWire(f.lengthM!, beamM(f) / 2, f.topM! + f.heightM! / 2),
    insideOhm: (f) => shellOhm(f.concreteOhmM!, f.lengthM!, f.coreDiameterM!, beamM(f)),
    spanM: (f) => [f.topM!, f.topM! + f.heightM!],
    extentM: (f) => f.lengthM!,
  };
}
