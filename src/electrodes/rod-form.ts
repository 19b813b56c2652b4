import { type ClosedForm, type Figures, nothingInside, notPositive, shellOhm } from './closed-form.ts';
import type { DrilledRodShape, Figure, RodFigures, RodShape, WellCasingShape } from './electrode.ts';
import { slenderRod, type VerticalRod } from './rod.ts';

/** One upright rod or casing. */
export function rodForm(shape: RodShape | WellCasingShape): ClosedForm {
  return {
    formula: 'rho / (2 pi L) (ln(8 L / d) - 1), with its image where the top is below grade',
    source: {
      document: 'IEEE Std 142',
      edition: null,
      clause: 'formulas for ground electrodes',
      provenance: 'second-hand',
    },
    errorShare: { low: -0.0135, high: 0 },
    figures: rodFigures(shape),
    alsoMissing: [],
    outOfRange: rodOutOfRange,
    perOhmM: (f) => slenderRod(rodOf(f), f.diameterM!),
    insideOhm: nothingInside,
    spanM: rodSpan,
    extentM: (f) => f.lengthM!,
  };
}

/** What is known of a rod by name; the angle, which the closed forms do not use, only where one was typed. */
export function rodFigures({
  lengthM,
  diameterM,
  topM,
  angleDeg = null,
}: RodFigures): Readonly<Record<string, Figure>> {
  return angleDeg === null ? { lengthM, diameterM, topM } : { lengthM, diameterM, topM, angleDeg };
}

export const rodOf = (f: Figures): VerticalRod => ({ lengthM: f.lengthM!, topM: f.topM! });
export const rodSpan = (f: Figures): readonly [number, number] => [f.topM!, f.topM! + f.lengthM!];
export const rodOutOfRange = (f: Figures): readonly string[] => {
  if ((f.angleDeg ?? 0) > 90) return ['angleDeg'];
  const wrong = notPositive(f, rodMayBeZero);
  return wrong.length === 0 && f.lengthM! < 2 * f.diameterM! ? ['lengthM', 'diameterM'] : wrong;
};

/** Figures of rods that may be 0. */
export const rodMayBeZero: readonly string[] = ['topM', 'angleDeg', 'joiningDepthM'];

/** A rod in a filled hole: the filling as a shell, the hole as a thicker rod. */
export function drilledRodForm(shape: DrilledRodShape): ClosedForm {
  const { holeDiameterM, backfillOhmM } = shape;
  return {
    formula: '(rho (ln(8 L / D) - 1) + rho_b ln(D / d)) / (2 pi L)',
    source: { document: 'IEEE Std 80', edition: '2000', clause: '14.6', provenance: 'memory' },
    errorShare: null,
    figures: { ...rodFigures(shape), holeDiameterM, backfillOhmM },
    alsoMissing: [],
    outOfRange: (f) => {
      if (f.holeDiameterM! < f.diameterM!) return ['holeDiameterM'];
      if ((f.angleDeg ?? 0) > 90) return ['angleDeg'];
      const wrong = notPositive(f, [...rodMayBeZero, 'backfillOhmM']);
      return wrong.length === 0 && f.lengthM! < 2 * f.holeDiameterM! ? ['lengthM', 'holeDiameterM'] : wrong;
    },
    perOhmM: (f) => slenderRod(rodOf(f), f.holeDiameterM!),
    insideOhm: (f) => shellOhm(f.backfillOhmM!, f.lengthM!, f.diameterM!, f.holeDiameterM!),
    spanM: rodSpan,
    extentM: (f) => f.lengthM!,
  };
}
