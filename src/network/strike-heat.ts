import type { Wire } from '../materials/wire.ts';
import { heatingBy } from '../surge/melting.ts';
import { levelFigures, type ProtectionLevel, protectionLevels } from '../surge/stroke-levels.ts';
import { type HeatedPart, heatedWire } from './heated-parts.ts';

/** What a stroke's heat does to a wire; riseK null where it melts. */
export interface StrikeHeat {
  readonly riseK: number | null;
  readonly melts: boolean;
}

/**
 * Of metal of known section; null: it is not known, or nobody gives its constants. Metal whose section was taken as the least
 * of its kind becomes at most as warm as this, so where that would melt nothing can be told: null too.
 */
export function heatOf(part: HeatedPart | null, actionA2s: number): StrikeHeat | null {
  if (part === null) return null;
  const heat = heatingBy(part.metal, part.areaM2, actionA2s);
  return heat.melts && part.from === 'taken' ? null : heat;
}

/**
 * The same by the first positive stroke of each protection level, of which the part takes its share; `shareOfAction`: of the
 * action integral of a stroke of that wave.
 */
export function heatOfAtLevels(part: HeatedPart | null, shareOfAction: number) {
  return protectionLevels.flatMap((level: ProtectionLevel) => {
    const heat = heatOf(part, shareOfAction * levelFigures(level)!.specificEnergyJPerOhm);
    return heat === null ? [] : [{ level, ...heat }];
  });
}

/** Of a wire by the likely section of its metal. */
export function heatAtLevels(wire: Wire | null, shareOfAction: number) {
  return heatOfAtLevels(heatedWire(wire), shareOfAction);
}
