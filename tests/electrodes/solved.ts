import type { Body, Run, SoilPoint } from '../../src/electrodes/body.ts';
import { bodyOf } from '../../src/electrodes/body-of.ts';
import { closedFormOf } from '../../src/electrodes/closed-form-of.ts';
import type {
  ElectrodeShape,
  Figure,
  PlateShape,
  RingShape,
  StarShape,
  WireShape,
} from '../../src/electrodes/electrode.ts';
import { likelyFigures } from '../../src/electrodes/electrode-resistance.ts';
import type { Placement } from '../../src/electrodes/placement.ts';
import { type SolvedBodies, type SolveOptions, solveBodies } from '../../src/electrodes/solve-bodies.ts';
import { type SoilImages, soilImages } from '../../src/soil/layer-images.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import { exact, type Interval } from '../../src/units/interval.ts';

/** The soil of all references that name no other: 100 ohm metre throughout. */
export const uniform = soilImages(layeredSoil([100]));
export const layered = (ohmM: readonly number[], thicknessM: readonly number[]): SoilImages =>
  soilImages(layeredSoil(ohmM, thicknessM));

/** Cut until the estimate of the error can hardly be brought lower. */
export const finest: SolveOptions = { errorShare: 0.0005 };

export const wire = (lengthM: number, depthM: number, radiusM: number): WireShape => ({
  kind: 'wire',
  lengthM: exact(lengthM),
  depthM: exact(depthM),
  radiusM: exact(radiusM),
});
export const ring = (acrossM: number, depthM: number, radiusM: number): RingShape => ({
  ...wire(Math.PI * acrossM, depthM, radiusM),
  kind: 'ring',
});
export const star = (count: number, armM: number, depthM: number, radiusM: number): StarShape => ({
  kind: 'star',
  count,
  armLengthM: exact(armM),
  depthM: exact(depthM),
  radiusM: exact(radiusM),
});
export const plate = (
  widthM: number,
  heightM: number,
  depthM: number,
  stands: 'on edge' | 'flat' = 'flat',
): PlateShape => ({
  kind: 'plate',
  widthM: exact(widthM),
  heightM: exact(heightM),
  depthM: exact(depthM),
  stands,
});

/** The body of a shape all of whose figures are known. */
export function bodyFrom(shape: ElectrodeShape, placement?: Placement): Body {
  const made = bodyOf(shape, figuresOf(shape), placement);
  if (!made.ok) throw new Error(`${made.key} ${JSON.stringify(made.figures)}`);
  return made.body;
}

/** Figures as the closed form of the kind names them. */
export function figuresOf(shape: ElectrodeShape): Readonly<Record<string, number>> {
  const figures: Readonly<Record<string, Figure>> = closedFormOf(shape).figures;
  if (Object.values(figures).includes(null)) throw new Error('a figure is not known');
  return likelyFigures(figures as Readonly<Record<string, Interval>>);
}

export function solved(
  bodies: readonly Body[],
  images: SoilImages = uniform,
  options: SolveOptions = {},
): SolvedBodies {
  const answer = solveBodies(bodies, images, options);
  if (!answer.ok) throw new Error(answer.reason);
  return answer;
}

export function ohmOfBody(body: Body, images?: SoilImages, options?: SolveOptions): number {
  return solved([body], images, options).resistanceOhm[0]!;
}

export function ohmOfShape(shape: ElectrodeShape, images?: SoilImages, options?: SolveOptions): number {
  return ohmOfBody(bodyFrom(shape), images, options);
}

export const run = (from: SoilPoint, to: SoilPoint, radiusM: number): Run => ({ from, to, radiusM, sheath: null });

/** How far a figure is from a reference, relative. */
export const off = (ours: number, reference: number): number => Math.abs(ours / reference - 1);
