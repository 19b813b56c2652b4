import { type ElectrodeResistance, electrodeResistance } from '../electrodes/electrode-resistance.ts';
import { soils } from '../materials/soils.ts';
import type { Electrode, Site } from '../site/site.ts';
import type { SoilLayers } from '../soil/layers.ts';
import { middle } from '../units/interval.ts';
import { electrodeShape } from './electrode-shape.ts';

/** Resistance of one electrode alone to remote earth, and where it comes from. */
export interface AloneOhm {
  /** null: not known at all. */
  readonly ohm: { readonly value: number | null; readonly low: number; readonly high: number } | null;
  readonly how: 'computed' | 'stated' | 'unknown';
  readonly formula: string | null;
  readonly source: ElectrodeResistance['source'] | null;
  /** What has to be known first. */
  readonly missing: readonly string[];
}

/** Stated where the owner states it (an instrument over its range bounds it from below by nothing known), else computed. */
export function aloneOhm(e: Electrode, soil: SoilLayers): AloneOhm {
  if (e.resistance !== null) return stated(e.resistance);
  const shape = electrodeShape(e);
  if (shape === null) return unknown(['resistance']);
  const { ohm, missing, outOfRange, formula, source } = electrodeResistance(shape, soil);
  if (ohm === null) return unknown([...missing, ...outOfRange]);
  return { ohm, how: 'computed', formula, source, missing };
}

function stated({ ohm, overRange }: NonNullable<Electrode['resistance']>): AloneOhm {
  const value = overRange ? null : middle(ohm);
  return { ohm: { value, low: ohm.low, high: ohm.high }, how: 'stated', formula: null, source: null, missing: [] };
}

function unknown(missing: readonly string[]): AloneOhm {
  return { ohm: null, how: 'unknown', formula: null, source: null, missing };
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
