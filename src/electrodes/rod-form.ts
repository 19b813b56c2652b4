import { type ClosedForm, type Figures, nothingInside, notPositive, shellOhm } from './closed-form.ts';
import type { DrilledRodShape, RodShape, WellCasingShape } from './electrode.ts';
import { slenderRod, type VerticalRod } from './rod.ts';

/** One upright rod or casing. */
export function rodForm({ lengthM, diameterM, topM }: RodShape | WellCasingShape): ClosedForm {
  return {
    formula: 'rho / (2 pi L) (ln(8 L / d) - 1), with its image where the top is below grade',
    source: {
      document: 'IEEE Std 142',
      edition: null,
      clause: 'formulas for ground electrodes',
      provenance: 'second-hand',
    },
    errorShare: { low: -0.0135, high: 0 },
    figures: { lengthM, diameterM, topM },
    alsoMissing: [],
    outOfRange: rodOutOfRange,
    perOhmM: (f) => slenderRod(rodOf(f), f.diameterM!),
    insideOhm: nothingInside,
    spanM: rodSpan,
    extentM: (f) => f.lengthM!,
  };
}

export const rodOf = (f: Figures): VerticalRod => ({ lengthM: f.lengthM!, topM: f.topM! });
export const rodSpan = (f: Figures): readonly [number, number] => [f.topM!, f.topM! + f.lengthM!];
export const rodOutOfRange = (f: Figures): readonly string[] => {
  const wrong = notPositive(f, ['topM']);
  return wrong.length === 0 && f.lengthM! < 2 * f.diameterM! ? ['lengthM', 'diameterM'] : wrong;
};

/** A rod in a filled hole: the filling as a shell, the hole as a thicker rod. */
export function drilledRodForm({ lengthM, diameterM, topM, holeDiameterM, backfillOhmM }: DrilledRodShape): ClosedForm {
  return {
    formula: '(rho (ln(8 L / D) - 1) + rho_b ln(D / d)) / (2 pi L)',
    source: { document: 'IEEE Std 80', edition: '2000', clause: '14.6', provenance: 'memory' },
    errorShare: null,
    figures: { lengthM, diameterM, topM, holeDiameterM, backfillOhmM },
    alsoMissing: [],
    outOfRange: (f) => {
      if (f.holeDiameterM! < f.diameterM!) return ['holeDiameterM'];
      const wrong = notPositive(f, ['topM', 'backfillOhmM']);
      return wrong.length === 0 && f.lengthM! < 2 * f.holeDiameterM! ? ['lengthM', 'holeDiameterM'] : wrong;
    },
    perOhmM: (f) => slenderRod(rodOf(f), f.holeDiameterM!),
    insideOhm: (f) => shellOhm(f.backfillOhmM!, f.lengthM!, f.diameterM!, f.holeDiameterM!),
    spanM: rodSpan,
    extentM: (f) => f.lengthM!,
  };
}
