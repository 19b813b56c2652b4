import type { ImageSet } from '../soil/layer-images.ts';
import { layerAt } from '../soil/layered-soil.ts';
import type { Segments } from './segments.ts';
import type { SolvedBodies } from './solve-bodies.ts';

/**
 * Potential against remote earth (volt) at points in the soil, for given potentials of all bodies (volt, one per body).
 * Points as east, north, depth in one array, three numbers each; metres, depth from 0 down. Each segment under all images of
 * its layer: as a line where the point is nearer than four of its lengths, else by its second moment (out by 5e-5 of its
 * share there, and by the fourth power less beyond). On the surface of a body the mean along each segment is the body's
 * potential; at its ends a point of it may read a quarter less.
 */
export function potentialAt(solved: SolvedBodies, bodyV: ArrayLike<number>, pointsM: Float64Array): Float64Array {
  const currents = segmentCurrents(solved, bodyV);
  const { images, segments } = solved;
  const count = pointsM.length / 3;
  const potential = new Float64Array(count);
  for (let p = 0; p < count; p++) {
    const receiver = layerAt(images.soil, pointsM[3 * p + 2]!);
    let sum = 0;
    for (let j = 0; j < segments.count; j++) {
      const set = images.between(segments.layer[j]!, receiver);
      sum += currents[j]! * segmentOhm(segments, set, j, pointsM, p);
    }
    potential[p] = sum;
  }
  return potential;
}

/** Ampere from each segment into the soil, for given potentials of the bodies. */
export function segmentCurrents({ leakage, segments }: SolvedBodies, bodyV: ArrayLike<number>): Float64Array {
  const bodies = bodyV.length;
  return Float64Array.from({ length: segments.count }, (_, j) => {
    let ampere = 0;
    for (let b = 0; b < bodies; b++) ampere += leakage[j * bodies + b]! * bodyV[b]!;
    return ampere;
  });
}

/** Square of the distance, in lengths, from which second moments do. */
const farSquared = 16;

/** Volt at point p per ampere from segment j. */
function segmentOhm(segments: Segments, set: ImageSet, j: number, pointsM: Float64Array, p: number): number {
  const { middleM, along, lengthM, radiusM } = segments;
  const dx = pointsM[3 * p]! - middleM[3 * j]!;
  const dy = pointsM[3 * p + 1]! - middleM[3 * j + 1]!;
  const level = dx * dx + dy * dy;
  const [length, width] = [lengthM[j]!, radiusM[j]! * radiusM[j]!];
  const levelAlong = along[3 * j]! * dx + along[3 * j + 1]! * dy;
  const down = along[3 * j + 2]!;
  const { count, strengthOhmM, sign, offsetM } = set;
  let sum = 0;
  for (let k = 0; k < count; k++) {
    const dz = pointsM[3 * p + 2]! - offsetM[k]! - sign[k]! * middleM[3 * j + 2]!;
    const squared = level + dz * dz;
    const isFar = squared > farSquared * length * length;
    const shift = levelAlong + sign[k]! * down * dz;
    sum += strengthOhmM[k]! * (isFar ? farMean : lineMean)(shift, squared, length, width);
  }
  return sum;
}

/** 1 / r (1 + (l^2 / 24) (3 c^2 - 1) / r^2), c the cosine of the line with the way to the point. */
function farMean(shift: number, squared: number, length: number): number {
  const moment = (length * length * ((3 * shift * shift) / squared - 1)) / 24;
  return (1 + moment / squared) / Math.sqrt(squared);
}

/** Mean of 1 / distance from a point to a line; `shift` is how far along it lies from its middle. */
function lineMean(shift: number, squared: number, length: number, width: number): number {
  const apart = Math.max(squared - shift * shift, width);
  const half = length / 2;
  return (Math.asinh((half + shift) / Math.sqrt(apart)) + Math.asinh((half - shift) / Math.sqrt(apart))) / length;
}
