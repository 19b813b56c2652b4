import type { Interval } from '../math/interval.ts';

/** A figure of an electrode in metres or ohm metres; null: unknown. */
export type Figure = Interval | null;

/**
 * What stands in the soil. `topM` is the depth of the upper end below grade, `depthM` that of the axis or centre. All
 * lengths in metres, resistivities in ohm metres.
 */
export type ElectrodeShape =
  | RodShape
  | RodsShape
  | WireShape
  | RingShape
  | StarShape
  | PlateShape
  | EncasedShape
  | DrilledRodShape
  | SurfaceStrapShape
  | PipeShape
  | WellCasingShape;

/** A rod, upright unless an angle is typed. */
export interface RodShape extends RodFigures {
  readonly kind: 'rod';
}

/**
 * Equal rods joined into one electrode; what the joining wire itself gives to the soil the closed form leaves out. `spacingM` is between
 * neighbours (star: from the middle rod to the others), `radiusM` that of the circle through them, or the corners; one of
 * the two is enough.
 */
export interface RodsShape extends RodFigures {
  readonly kind: 'rods';
  readonly count: number | null;
  /** Triangle and square are hollow, the rods along their sides; star is one rod in the middle of a ring. */
  readonly layout: 'line' | 'triangle' | 'square' | 'ring' | 'star' | null;
  readonly spacingM: Figure;
  readonly radiusM: Figure;
  /** The bare wire from rod to rod, where one is known; its depth null: as deep as the tops of the rods. */
  readonly joiningWire?: { readonly radiusM: Figure; readonly depthM: Figure } | null;
}

export interface RodFigures {
  readonly lengthM: Figure;
  readonly diameterM: Figure;
  readonly topM: Figure;
  /** From the vertical, degrees, 0 to 90; null: upright. The closed forms take every rod as upright. */
  readonly angleDeg?: Figure;
}

/** A straight bare wire lying level. A strap: see `stripRadiusM`. */
export interface WireShape {
  readonly kind: 'wire';
  readonly lengthM: Figure;
  readonly radiusM: Figure;
  readonly depthM: Figure;
}

/** A closed loop of bare wire lying level, read as a circle; `lengthM` is all the way round. */
export interface RingShape {
  readonly kind: 'ring';
  readonly lengthM: Figure;
  readonly radiusM: Figure;
  readonly depthM: Figure;
}

/** Equal bare wires lying level, from one point in equally spread directions (two: one straight line). */
export interface StarShape {
  readonly kind: 'star';
  readonly count: number | null;
  readonly armLengthM: Figure;
  readonly radiusM: Figure;
  readonly depthM: Figure;
}

/** A plate; `depthM` is that of its centre. */
export interface PlateShape {
  readonly kind: 'plate';
  readonly widthM: Figure;
  readonly heightM: Figure;
  readonly depthM: Figure;
  readonly stands: 'on edge' | 'flat' | null;
}

/** A bar or wire along the middle of a buried beam of concrete. */
export interface EncasedShape {
  readonly kind: 'encased';
  readonly lengthM: Figure;
  readonly widthM: Figure;
  readonly heightM: Figure;
  readonly topM: Figure;
  readonly concreteOhmM: Figure;
  readonly coreDiameterM: Figure;
}

/** A rod in a drilled hole that is filled with something else than the soil. */
export interface DrilledRodShape extends RodFigures {
  readonly kind: 'drilled rod';
  readonly holeDiameterM: Figure;
  readonly backfillOhmM: Figure;
}

/** A thin strap lying flat at grade, on rock for instance; soil spread over it is left out. */
export interface SurfaceStrapShape {
  readonly kind: 'surface strap';
  readonly lengthM: Figure;
  readonly widthM: Figure;
}

/** A bare metal pipe lying level. */
export interface PipeShape {
  readonly kind: 'pipe';
  readonly lengthM: Figure;
  readonly diameterM: Figure;
  readonly depthM: Figure;
}

/** A bare metal pipe standing upright. */
export interface WellCasingShape extends RodFigures {
  readonly kind: 'well casing';
}

/** Where a formula comes from; `memory`: not seen, to be checked against the document. */
export interface FormulaSource {
  readonly document: string;
  readonly edition: string | null;
  readonly clause: string | null;
  readonly provenance: 'read' | 'second-hand' | 'memory';
}
