/** A point in the soil, metres: east, north, and the depth below the surface (positive down). */
export type SoilPoint = readonly [eastM: number, northM: number, depthM: number];

/** Bare metal in the soil that is at one potential: an electrode, or a stretch of a buried conductor. */
export interface Body {
  readonly runs: readonly Run[];
}

/** A straight round conductor in the soil, thin beside its length. */
export interface Run {
  readonly from: SoilPoint;
  readonly to: SoilPoint;
  /** Of what touches the soil: the metal, or the concrete or backfill round it. */
  readonly radiusM: number;
  /** Concrete or backfill between the metal (its own radius) and the soil; null: bare. */
  readonly sheath: { readonly resistivityOhmM: number; readonly coreRadiusM: number } | null;
}
