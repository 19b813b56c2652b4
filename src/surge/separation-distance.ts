import { notNegative, within } from './positive.ts';
import type { ProtectionLevel } from './stroke-levels.ts';

/** ki, by the level of protection: IEC 62305-3:2010 (as in a trade guide). */
export const levelFactor: Readonly<Record<ProtectionLevel, number>> = { I: 0.08, II: 0.06, III: 0.04, IV: 0.04 };

/** km, by what lies between: air, or concrete, brick, wood. The least along the way counts. Same source. */
export const materialFactor = { air: 1, solid: 0.5 } as const;

/**
 * Least distance at which metalwork that is not bonded is not reached by a side flash, metres: (ki / km) kc l. kc is the share
 * of the current in the conductor beside it (`simpleShare` and the like), l the length of that conductor down to the nearest
 * bonding point, metres. IEC 62305-3:2010, 6.3 (formula and one example as in a trade guide). It holds for the currents of
 * the level, in a building of many down conductors; a mast's own network is worked out instead.
 */
export function separationDistance(
  level: ProtectionLevel,
  between: keyof typeof materialFactor,
  share: number,
  lengthM: number,
): number {
  within(share, Number.MIN_VALUE, 1, 'share of the current');
  return (levelFactor[level] / materialFactor[between]) * share * notNegative(lengthM, 'length');
}
