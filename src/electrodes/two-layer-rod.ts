import { type LayeredSoil, layeredSoil } from '../soil/layered-soil.ts';

/** One rod, its top at grade, measured when it was so deep. */
export interface RodReading {
  readonly lengthM: number;
  readonly ohm: number;
}

export interface MeasuredRod {
  /** From the shortest to the longest. */
  readonly readings: readonly RodReading[];
  readonly radiusM: number;
  readonly solve: (lengthM: number, radiusM: number, soil: LayeredSoil) => number;
}

export interface TwoLayerRodFit {
  readonly boundaryM: number;
  readonly upperOhmM: number;
  readonly lowerOhmM: number;
  /** How far the worst of the readings between is off (0.03: 3 %); the shortest and the longest are met. */
  readonly worstShare: number;
}

/** Contrast of the two layers, either way, that is looked for. */
const greatestContrast = 1e4;
/** Upper layer that contrasts are tried with: any figure does. */
const trialOhmM = 100;

/**
 * The two-layer soil with a boundary at a depth (m) in which a rod has the readings of its shortest and its longest length;
 * null: none has. Resistance is proportional to both resistivities together, so that only their ratio is looked for: to that
 * side of uniform soil on which the readings lie. The method is ours.
 */
export function twoLayerRod(rod: MeasuredRod, boundaryM: number): TwoLayerRodFit | null {
  const [short, long] = [rod.readings[0]!, rod.readings.at(-1)!];
  const per = ({ lengthM }: RodReading, contrast: number): number =>
    rod.solve(lengthM, rod.radiusM, layeredSoil([trialOhmM, trialOhmM * contrast], [boundaryM])) / trialOhmM;
  const off = (logContrast: number): number => {
    const contrast = Math.exp(logContrast);
    return Math.log(short.ohm / long.ohm) - Math.log(per(short, contrast) / per(long, contrast));
  };
  const uniform = off(0);
  // a better lower layer widens the gap between the short rod and the long one
  const end = (uniform > 0 ? -1 : 1) * Math.log(greatestContrast);
  const atEnd = off(end);
  if (uniform < 0 === atEnd < 0) return null;
  const contrast = Math.exp(rootBetween(off, end, atEnd, 0, uniform));
  const upperOhmM = short.ohm / per(short, contrast);
  const shares = rod.readings.map((reading) => Math.abs(reading.ohm / (upperOhmM * per(reading, contrast)) - 1));
  return { boundaryM, upperOhmM, lowerOhmM: upperOhmM * contrast, worstShare: Math.max(...shares) };
}

/** Root between two places where `off` has opposite signs, to 1e-5, by false position that halves an end kept twice. */
function rootBetween(off: (x: number) => number, from: number, before: number, to: number, after: number): number {
  let [a, fa, b, fb] = [from, before, to, after];
  for (let step = 0; step < 60 && Math.abs(b - a) > 1e-5; step++) {
    const x = (a * fb - b * fa) / (fb - fa);
    const fx = off(x);
    if (Math.abs(fx) < 1e-6) return x;
    if (fx < 0 === fb < 0) fa /= 2;
    else [a, fa] = [b, fb];
    [b, fb] = [x, fx];
  }
  return b;
}
