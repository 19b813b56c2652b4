import { type NamedCondition, namedCondition } from '../materials/soil-conditions.ts';
import { soils } from '../materials/soils.ts';
import type { Site, State } from '../site/site.ts';
import { conditionSoil } from '../soil/condition-soil.ts';
import type { SoilLayers } from '../soil/layers.ts';
import type { ProfileBounds } from '../soil/profile-bounds.ts';
import type { FittedFigure, SoundingFit } from '../soil/sounding-fit.ts';
import type { Interval } from '../units/interval.ts';
import { siteSounding } from './site-sounding.ts';

/** The soil of a site in one condition: its layers as ranges, and the plain soils that enclose it. */
export interface GroundSoil {
  readonly layers: SoilLayers;
  readonly profile: ProfileBounds;
  /** What a season changes; null: the soil as typed. */
  readonly condition: NamedCondition | null;
  /** Where the layers come from. */
  readonly from: 'typed' | 'readings' | 'preset';
}

/** null where no layer is known. `condition` is laid over the layers as typed. */
export function groundSoil(site: Site, condition: NamedCondition | null): GroundSoil | null {
  const layers = soilLayersOf(site);
  if (layers.length === 0) return null;
  const isTyped = (site.soil?.layers.length ?? 0) > 0;
  const from = isTyped ? 'typed' : layers[0]!.likely === undefined ? 'preset' : 'readings';
  return { layers, profile: conditionSoil(layers, condition ?? {}), condition, from };
}

/** What a state of the file says of the ground: frozen before dry before wet; null where it says nothing. */
export function conditionOfState(site: Site, state: State | undefined): NamedCondition | null {
  const frostM = site.soil?.frostM ?? null;
  if (state?.frozen === 'yes') return namedCondition('winter', frostM);
  if (state?.dry === 'yes') return namedCondition('dry', frostM);
  return state?.wet === 'yes' ? namedCondition('wet', frostM) : null;
}

/** Layers as typed; else those that fit the four-pin readings; else the preset that the owner names, as one layer; or none. */
export function soilLayersOf(site: Site): SoilLayers {
  const { soil } = site;
  const typed = (soil?.layers ?? []).flatMap(({ resistivityOhmM, thicknessM }) =>
    resistivityOhmM === null ? [] : [{ resistivityOhmM, thicknessM }],
  );
  if (typed.length > 0) return typed.length === soil!.layers.length ? typed : [];
  const sounding = siteSounding(site);
  if (sounding !== null && sounding.fit.chosen !== null) return fittedLayers(sounding.fit);
  const preset = soils.find((s) => s.name === soil?.type);
  return preset === undefined ? [] : [{ resistivityOhmM: preset.resistivityOhmM, thicknessM: null }];
}

/** Each figure's range, open where the readings leave it open; the fit itself as the likely soil. */
function fittedLayers({ layers }: SoundingFit): SoilLayers {
  const range = ({ low, high }: FittedFigure): Interval => ({ low: low ?? 0, high: high ?? Number.POSITIVE_INFINITY });
  return layers.map(({ resistivityOhmM, thicknessM }) => ({
    resistivityOhmM: range(resistivityOhmM),
    thicknessM: thicknessM === null ? null : range(thicknessM),
    likely: { resistivityOhmM: resistivityOhmM.value, thicknessM: thicknessM?.value ?? null },
  }));
}
