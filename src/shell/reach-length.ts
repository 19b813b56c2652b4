import type { StudyDepthCurve } from '../study/study-earth.ts';

/** At what length a rod would come down to a resistance; `null` ends: at none of the lengths that were tried. */
export interface Reach {
  /** In the soil at its least, and at its greatest. */
  readonly fromM: number | null;
  readonly toM: number | null;
  /** At its own length already, in the soil at its greatest. */
  readonly already: boolean;
}

/**
 * Length (m) at which the curve of an electrode comes down to so many ohm, by its lower and by its upper bound; between two
 * lengths that were tried straight on the logarithms. Never shorter than the electrode is.
 */
export function reachLength({ points, lengthM }: StudyDepthCurve, limitOhm: number): Reach {
  const longer = points.filter((p) => lengthM === null || p.lengthM >= lengthM * 0.999);
  const low = longer.map((p) => [p.lengthM, p.ohm.low] as const);
  const high = longer.map((p) => [p.lengthM, p.ohm.high ?? Number.POSITIVE_INFINITY] as const);
  const already = lengthM !== null && high.length > 0 && high[0]![1] <= limitOhm;
  return { fromM: crossing(low, limitOhm), toM: crossing(high, limitOhm), already };
}

function crossing(curve: readonly (readonly [lengthM: number, ohm: number])[], limitOhm: number): number | null {
  const at = curve.findIndex(([, ohm]) => ohm <= limitOhm);
  if (at < 0) return null;
  const [endM, endOhm] = curve[at]!;
  const before = curve[at - 1];
  if (before === undefined || !Number.isFinite(before[1]) || endOhm <= 0) return endM;
  const [startM, startOhm] = before;
  const share = Math.log(startOhm / limitOhm) / Math.log(startOhm / endOhm);
  return startM * (endM / startM) ** share;
}
