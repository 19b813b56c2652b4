import type { Body } from './body.ts';
import { influenceMatrix } from './influence-matrix.ts';
import { leadingOhm } from './leading-ohm.ts';
import { type ScaledSoil, scaledSolver } from './scaled-soil.ts';
import { segmentsOf } from './segments.ts';

export interface SpacingGain {
  readonly spacingM: number;
  /** Both joined. */
  readonly ohm: number;
  /** 1 - that over the one alone: 0.5 as if neither felt the other. */
  readonly gainShare: number;
}

interface FlushOrSunkRod {
  readonly lengthM: number;
  readonly radiusM: number;
  readonly topM: number;
}

/** Pieces of each rod: within 0.3 %, and what one rod has of that the others have too. */
const pieces = 10;
const cutting = (): number => pieces;

/** What a second rod like the first, joined to it, brings at several distances (m) from middle to middle. */
export function spacingGains(
  rod: FlushOrSunkRod,
  spacingsM: readonly number[],
  soil: ScaledSoil,
): readonly SpacingGain[] {
  return spacingsM.flatMap((spacingM) => {
    const solved = scaledSolver([rodAt(rod, 0), rodAt(rod, spacingM)], { cutting, finerUpTo: 0 })(soil);
    if (!solved.ok) return [];
    const [own, mutual] = [solved.resistanceOhm[0]!, solved.resistanceOhm[1]!];
    const ohm = (own + mutual) / 2;
    return [{ spacingM, ohm, gainShare: 1 - ohm / solved.aloneOhm[0]! }];
  });
}

/**
 * Resistance (ohm) of 1, 2, ... `most` rods like the first in a straight line, evenly spaced and joined: what each further
 * one still brings. null where they cannot be solved. All are solved once: fewer are the first of them.
 */
export function rodsInLine(
  rod: FlushOrSunkRod,
  spacingM: number,
  most: number,
  { factor, images }: ScaledSoil,
): readonly (number | null)[] {
  const rods = Array.from({ length: most }, (_, k) => rodAt(rod, k * spacingM));
  const segments = segmentsOf(rods, images.soil, cutting);
  const ohm = leadingOhm(influenceMatrix(segments, images), segments.count);
  return rods.map((_, k) => (ohm === null ? null : ohm[segments.body.lastIndexOf(k)]! * factor));
}

function rodAt({ lengthM, radiusM, topM }: FlushOrSunkRod, eastM: number): Body {
  return { runs: [{ from: [eastM, 0, topM], to: [eastM, 0, topM + lengthM], radiusM, sheath: null }] };
}
