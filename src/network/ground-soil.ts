import { type NamedCondition, namedCondition } from '../materials/soil-conditions.ts';
import { soils } from '../materials/soils.ts';
import type { Site, State } from '../site/site.ts';
import { conditionSoil } from '../soil/condition-soil.ts';
import type { SoilLayers } from '../soil/layers.ts';
import type { ProfileBounds } from '../soil/profile-bounds.ts';

/** The soil of a site in one condition: its layers as ranges, and the plain soils that enclose it. */
export interface GroundSoil {
  readonly layers: SoilLayers;
  readonly profile: ProfileBounds;
  /** What a season changes; null: the soil as typed. */
  readonly condition: NamedCondition | null;
}

/** null where no layer is known. `condition` is laid over the layers as typed. */
export function groundSoil(site: Site, condition: NamedCondition | null): GroundSoil | null {
  const layers = soilLayersOf(site);
  if (layers.length === 0) return null;
  return { layers, profile: conditionSoil(layers, condition ?? {}), condition };
}

/** What a state of the file says of the ground: frozen before dry before wet; null where it says nothing. */
export function conditionOfState(site: Site, state: State | undefined): NamedCondition | null {
  const frostM = site.soil?.frostM ?? null;
  if (state?.frozen === 'yes') return namedCondition('winter', frostM);
  if (state?.dry === 'yes') return namedCondition('dry', frostM);
  return state?.wet === 'yes' ? namedCondition('wet', frostM) : null;
}

/** Layers as typed, or the preset that the owner names as one layer; empty where nothing is known. */
export function soilLayersOf(site: Site): SoilLayers {
  const { soil } = site;
  if (soil === null) return [];
  const layers = soil.layers.flatMap(({ resistivityOhmM, thicknessM }) =>
    resistivityOhmM === null ? [] : [{ resistivityOhmM, thicknessM }],
  );
  if (layers.length > 0) return layers.length === soil.layers.length ? layers : [];
  const preset = soils.find((s) => s.name === soil.type);
  return preset === undefined ? [] : [{ resistivityOhmM: preset.resistivityOhmM, thicknessM: null }];
}
