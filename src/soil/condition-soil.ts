import type { Interval } from '../math/interval.ts';
import type { SoilLayers } from './layers.ts';
import { type ProfileBounds, profileBounds, type SoilZone } from './profile-bounds.ts';

/**
 * What a season does to soil from the surface down: frozen to a depth, then dry to a depth, then wet to a depth, each with
 * its resistivity over that of the same soil otherwise. Depths in metres from the surface; null or left out: it is not.
 */
export interface SoilCondition {
  readonly frostM?: Interval | null;
  readonly frozenRatio?: Interval | null;
  readonly dryDepthM?: Interval | null;
  readonly dryRatio?: Interval | null;
  readonly wetDepthM?: Interval | null;
  readonly wetRatio?: Interval | null;
}

/**
 * The soil of a condition: a frozen top over two layers is three layers. Bounds and the likely one, as of `profileBounds`.
 * Throws RangeError, in words for a programmer, for a depth without its ratio or a ratio that is not above 0.
 */
export function conditionSoil(layers: SoilLayers, condition: SoilCondition): ProfileBounds {
  return profileBounds(layers, conditionZones(condition));
}

/** The changed zones of a condition, from the surface down. */
export function conditionZones(condition: SoilCondition): readonly SoilZone[] {
  const { frostM, frozenRatio, dryDepthM, dryRatio, wetDepthM, wetRatio } = condition;
  const changes = [
    [frostM, frozenRatio],
    [dryDepthM, dryRatio],
    [wetDepthM, wetRatio],
  ] as const;
  return changes.flatMap(([footM, ratio]) => {
    if (footM == null) return [];
    if (ratio == null || !(ratio.low > 0)) throw new RangeError('a changed depth needs a ratio above 0');
    return [{ footM, ratio }];
  });
}
