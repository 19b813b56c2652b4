import type { Body } from './body.ts';
import { type ScaledSoil, scaledSolver } from './scaled-soil.ts';

export interface SpacingGain {
  readonly spacingM: number;
  /** Both joined. */
  readonly ohm: number;
  /** 1 - that over the one alone: 0.5 as if neither felt the other. */
  readonly gainShare: number;
}

/** What a second rod like the first, joined to it, brings at several distances (m) from middle to middle. */
export function spacingGains(
  rod: { readonly lengthM: number; readonly radiusM: number; readonly topM: number },
  spacingsM: readonly number[],
  soil: ScaledSoil,
): readonly SpacingGain[] {
  const { lengthM, radiusM, topM } = rod;
  const at = (eastM: number): Body => ({
    runs: [{ from: [eastM, 0, topM], to: [eastM, 0, topM + lengthM], radiusM, sheath: null }],
  });
  return spacingsM.flatMap((spacingM) => {
    const solved = scaledSolver([at(0), at(spacingM)])(soil);
    if (!solved.ok) return [];
    const [own, mutual] = [solved.resistanceOhm[0]!, solved.resistanceOhm[1]!];
    const ohm = (own + mutual) / 2;
    return [{ spacingM, ohm, gainShare: 1 - ohm / solved.aloneOhm[0]! }];
  });
}
