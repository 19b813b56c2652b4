import { type ClosedForm, dwight, type Figures, nothingInside, notPositive } from './closed-form.ts';
import type { PipeShape, RingShape, StarShape, SurfaceStrapShape, WireShape } from './electrode.ts';
import { ringWire, straightWire } from './level-wire.ts';
import { star } from './star.ts';

/** A straight wire or pipe. */
export function wireForm(shape: WireShape | PipeShape): ClosedForm {
  const { lengthM, depthM } = shape;
  const isWire = shape.kind === 'wire';
  const radius = (f: Figures): number => f.radiusM ?? f.diameterM! / 2;
  return {
    formula: 'rho / (4 pi) (f(a) + f(2 h)), f(x) = 2 / L (asinh(L / x) - sqrt(1 + (x / L)^2) + x / L)',
    source: dwight,
    // the thicker, the more current the ends carry: a pipe of a hundred radii has 2.5 % less
    errorShare: { low: isWire ? -0.01 : -0.03, high: 0 },
    figures: isWire ? { lengthM, radiusM: shape.radiusM, depthM } : { lengthM, diameterM: shape.diameterM, depthM },
    alsoMissing: [],
    outOfRange: wireOutOfRange('lengthM', isWire ? 'radiusM' : 'diameterM'),
    perOhmM: (f) => straightWire(f.lengthM!, radius(f), f.depthM!),
    insideOhm: nothingInside,
    spanM: (f) => [f.depthM!, f.depthM!],
    extentM: (f) => f.lengthM!,
  };
}

/** A wire has to be at least four times as long as thick. */
const wireOutOfRange =
  (length: string, thickness: string) =>
  (f: Figures): readonly string[] => {
    const wrong = notPositive(f, ['depthM']);
    return wrong.length === 0 && f[length]! < 4 * f[thickness]! ? [length, thickness] : wrong;
  };

/** A closed loop. */
export function ringForm({ lengthM, radiusM, depthM }: RingShape): ClosedForm {
  return {
    formula: 'rho / (2 pi^2 D) (ln(8 D / d) + ln(2 D / h)), D = length / pi',
    source: { document: 'ETL 1110-9-10', edition: null, clause: 'equation 1-14', provenance: 'read' },
    // a square of the same length has 3.8 % more
    errorShare: { low: -0.003, high: 0.04 },
    figures: { lengthM, radiusM, depthM },
    alsoMissing: [],
    outOfRange: (f) => {
      const wrong = notPositive(f, ['depthM']);
      if (wrong.length > 0) return wrong;
      if (f.depthM! > f.lengthM! / Math.PI / 2) return ['depthM'];
      return f.lengthM! < 20 * f.radiusM! ? ['lengthM', 'radiusM'] : [];
    },
    perOhmM: (f) => ringWire(f.lengthM!, f.radiusM!, f.depthM!),
    insideOhm: nothingInside,
    spanM: (f) => [f.depthM!, f.depthM!],
    extentM: (f) => f.lengthM! / Math.PI,
  };
}

/** True figure of a star relative to even leakage, by number of arms (boundary elements, 40 to an arm). */
const starErrors: Readonly<Record<number, number>> = { 1: -0.01, 2: -0.01, 3: -0.025, 4: -0.045, 6: -0.085, 8: -0.12 };

/** Wires from one point. */
export function starForm({ count, armLengthM, radiusM, depthM }: StarShape): ClosedForm {
  const lowest = count === null ? undefined : starErrors[count];
  const isCount = count !== null && Number.isInteger(count) && count >= 1;
  return {
    formula:
      'even leakage of every arm, average potential of one, with its image (the integrals behind the star series)',
    source: dwight,
    errorShare: lowest === undefined ? null : { low: lowest, high: 0 },
    figures: { armLengthM, radiusM, depthM },
    alsoMissing: isCount ? [] : ['count'],
    outOfRange: wireOutOfRange('armLengthM', 'radiusM'),
    perOhmM: (f) => star(count!, f.armLengthM!, f.radiusM!, f.depthM!),
    insideOhm: nothingInside,
    spanM: (f) => [f.depthM!, f.depthM!],
    extentM: (f) => (count === 1 ? 1 : 2) * f.armLengthM!,
  };
}

/** A strap at grade. */
export function surfaceStrapForm({ lengthM, widthM }: SurfaceStrapShape): ClosedForm {
  return {
    formula: 'rho / (pi L) (ln(8 L / w) - 1)',
    source: dwight,
    errorShare: null,
    figures: { lengthM, widthM },
    alsoMissing: [],
    outOfRange: (f) => {
      const wrong = notPositive(f, []);
      return wrong.length === 0 && f.lengthM! < 2 * f.widthM! ? ['lengthM', 'widthM'] : wrong;
    },
    // a thin strip does what a round wire of a quarter of its width does; at grade its image lies on it
    perOhmM: (f) => (Math.log((8 * f.lengthM!) / f.widthM!) - 1) / (Math.PI * f.lengthM!),
    insideOhm: nothingInside,
    spanM: () => [0, 0],
    extentM: (f) => f.lengthM!,
  };
}
