/**
 * Fall-of-potential measurement: a current probe at D from the electrode, a potential probe on the line to it at x. Theory
 * of a small (hemispherical) electrode in uniform soil.
 *
 * Source: MIL-HDBK-419A volume I, equations 2-41 to 2-46 (read in part); the agreement check is practice (from memory).
 */

/** Where on the line the error of a small electrode in uniform soil is nothing: the golden section, "62 %". */
export const trueProbeShare = (Math.sqrt(5) - 1) / 2;

/** Shares of the distance of the current probe that a measurement is made at, the middle one being the reading. */
export const probeShares = [0.52, 0.62, 0.72] as const;

/** How far the outer two readings may be off the middle one. */
export const agreementShare = 0.05;

/** The current probe stands at least this many times the largest dimension of the electrode away; better the second. */
export const currentProbeTimes = { least: 5, better: 10 } as const;

/**
 * Error of a reading, as a share of the true resistance (-0.1: reads 10 % low), for an electrode like a hemisphere of radius
 * r: r (1 / (D - x) - 1 / x - 1 / D). Range: r < x < D.
 */
export function probeError(radiusM: number, probeM: number, currentProbeM: number): number {
  if (!(radiusM > 0 && probeM > radiusM && currentProbeM > probeM)) {
    throw new RangeError('the probe stands between the electrode and the current probe');
  }
  return radiusM * (1 / (currentProbeM - probeM) - 1 / probeM - 1 / currentProbeM);
}

export interface ProbeAgreement {
  readonly agrees: boolean;
  /** The reading farthest from the middle one, less it, over it. */
  readonly worstShare: number;
}

/**
 * Whether the readings at 52, 62 and 72 % agree, so that the one at 62 % counts: both others within 5 % of it. Throws
 * RangeError for a reading that is not above 0.
 */
export function probesAgree(readingsOhm: readonly [at52: number, at62: number, at72: number]): ProbeAgreement {
  if (!readingsOhm.every((ohm) => ohm > 0)) throw new RangeError('a reading is above 0 ohm');
  const [near, middle, far] = readingsOhm;
  const [below, above] = [near / middle - 1, far / middle - 1];
  const worstShare = Math.abs(below) > Math.abs(above) ? below : above;
  // as printed: readings of two or three digits
  return { agrees: Math.abs(worstShare) <= agreementShare + 1e-9, worstShare };
}
