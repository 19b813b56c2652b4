import type { Wire } from '../materials/wire.ts';
import { heatingBy } from '../surge/melting.ts';
import { levelFigures, type ProtectionLevel, protectionLevels } from '../surge/stroke-levels.ts';
import { middle } from '../units/interval.ts';

/** What a stroke's heat does to a wire; riseK null where it melts. */
export interface StrikeHeat {
  readonly riseK: number | null;
  readonly melts: boolean;
}

/** By the likely section of its metal; null: metal or section is not known, or nobody gives its constants. */
export function strikeHeat(wire: Wire | null, actionA2s: number): StrikeHeat | null {
  const areaM2 = wire?.areaM2 == null ? null : middle(wire.areaM2);
  const constants = wire?.metal?.heating ?? null;
  return areaM2 === null || constants === null || !(areaM2 > 0) ? null : heatingBy(constants, areaM2, actionA2s);
}

/**
 * The same by the first positive stroke of each protection level, of which the wire takes its share; `shareOfAction`: of the
 * action integral of a stroke of that wave.
 */
export function heatAtLevels(wire: Wire | null, shareOfAction: number) {
  return protectionLevels.flatMap((level: ProtectionLevel) => {
    const heat = strikeHeat(wire, shareOfAction * levelFigures(level)!.specificEnergyJPerOhm);
    return heat === null ? [] : [{ level, ...heat }];
  });
}
