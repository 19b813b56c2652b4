import type { Interval } from '../math/interval.ts';

/** Level layers of soil from the surface down. */
export type SoilLayers = readonly SoilLayer[];

export interface SoilLayer {
  readonly resistivityOhmM: Interval;
  /** null for the last layer, which goes on for ever; for another one: unknown. */
  readonly thicknessM: Interval | null;
  /** The figures to go by where they are not the middles of the ranges: those of a fit. */
  readonly likely?: { readonly resistivityOhmM: number; readonly thicknessM: number | null };
}
