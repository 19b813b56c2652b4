import type { ImageSet, SoilImages } from '../soil/layer-images.ts';
import { layerAt } from '../soil/layered-soil.ts';
import type { SoilPoint } from './body.ts';
import { farAndNear } from './far-bodies.ts';
import type { Segments } from './segments.ts';
import type { SolvedBodies } from './solve-bodies.ts';
import { type SurfaceKernel, surfaceKernels } from './surface-kernel.ts';

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
    const point = [pointsM[3 * p]!, pointsM[3 * p + 1]!, pointsM[3 * p + 2]!] as const;
    const receiver = layerAt(images.soil, point[2]);
    let sum = 0;
    for (let j = 0; j < segments.count; j++) {
      const set = images.between(segments.layer[j]!, receiver);
      sum += currents[j]! * segmentOhm(segments, set, j, point);
    }
    potential[p] = sum;
  }
  return potential;
}

/**
 * The same for the surface, at many places on the plan (east and north, two numbers each), in a twentieth of the time. A segment
 * three of its lengths away is two points, at which a polynomial of third degree is integrated exactly (Gauss and Legendre;
 * out by 1e-4 of its share there and by the fourth power less beyond); a nearer one is cut until its pieces are so far. No
 * place has more than the highest of the bodies, or less than the lowest or remote earth, as no potential does where no
 * current comes from.
 */
export function surfacePotential(solved: SolvedBodies, bodyV: ArrayLike<number>, placesM: Float64Array): Float64Array {
  const currents = segmentCurrents(solved, bodyV);
  const { images, segments } = solved;
  const potential = new Float64Array(placesM.length / 2);
  const { far, near } = farAndNear(solved, currents, placesM);
  const kernels = surfaceKernels(images);
  for (const { ampere, atM, layer } of far) {
    const points = { placesM: Float64Array.of(atM[0], atM[1]), kernels: [kernels(layer, atM[2])] };
    for (let p = 0; p < potential.length; p++) {
      potential[p]! += ampere * ohmOfPoints(points, placesM[2 * p]!, placesM[2 * p + 1]!);
    }
  }
  for (const j of near) {
    const points = pointsOf(segments, images, j);
    for (let p = 0; p < potential.length; p++) {
      const [east, north] = [placesM[2 * p]!, placesM[2 * p + 1]!];
      const halvings = halvingsFor(segments, j, east, north);
      const ohm =
        halvings > mostHalvings
          ? segmentOhm(segments, images.between(segments.layer[j]!, 0), j, [east, north, 0])
          : ohmOfPoints(points(halvings), east, north);
      potential[p]! += currents[j]! * ohm;
    }
  }
  const [least, most] = [Math.min(0, ...Array.from(bodyV)), Math.max(0, ...Array.from(bodyV))];
  return potential.map((volt) => Math.min(most, Math.max(least, volt)));
}

/** Distance, in lengths of a piece, from which two points stand for it. */
const farLengths = 3;
const mostHalvings = 4;

/** How often a segment has to be cut in two for each piece to be far from a place on the surface. */
function halvingsFor({ middleM, along, lengthM }: Segments, j: number, east: number, north: number): number {
  const [dx, dy, dz] = [east - middleM[3 * j]!, north - middleM[3 * j + 1]!, -middleM[3 * j + 2]!];
  const length = lengthM[j]!;
  const squared = dx * dx + dy * dy + dz * dz;
  if (squared > (farLengths + 0.5) ** 2 * length * length) return 0;
  const shift = along[3 * j]! * dx + along[3 * j + 1]! * dy + along[3 * j + 2]! * dz;
  const beyond = Math.max(0, Math.abs(shift) - length / 2);
  const nearestM = Math.sqrt(Math.max(0, squared - shift * shift) + beyond * beyond);
  return Math.max(0, Math.ceil(Math.log2((farLengths * length) / nearestM)));
}

/** Points with an even share of a segment's current: east and north of each in turn, and what each makes at the surface. */
interface Points {
  readonly placesM: Float64Array;
  readonly kernels: readonly SurfaceKernel[];
}

/** Points of a segment by how often it is cut in two, made when they are first asked for. */
function pointsOf({ middleM, along, lengthM, layer }: Segments, images: SoilImages, j: number) {
  const kernelAt = surfaceKernels(images);
  const kept: Points[] = [];
  const made = (shares: readonly number[]): Points => {
    const at = (share: number, axis: number): number =>
      middleM[3 * j + axis]! + share * lengthM[j]! * along[3 * j + axis]!;
    return {
      placesM: Float64Array.from(shares.flatMap((share) => [at(share, 0), at(share, 1)])),
      kernels: shares.map((share) => kernelAt(layer[j]!, at(share, 2))),
    };
  };
  return (halvings: number): Points => {
    kept[halvings] ??= made(gaussShares(halvings));
    return kept[halvings];
  };
}

/** Two points in each piece, as shares of the length from the middle of the whole. */
function gaussShares(halvings: number): readonly number[] {
  const pieces = 2 ** halvings;
  const arm = 1 / Math.sqrt(12);
  return Array.from({ length: pieces }, (_, i) => [i + 0.5 - arm, i + 0.5 + arm].map((s) => s / pieces - 0.5)).flat();
}

function ohmOfPoints({ placesM, kernels }: Points, east: number, north: number): number {
  let sum = 0;
  for (let k = 0; k < kernels.length; k++) {
    const [dx, dy] = [east - placesM[2 * k]!, north - placesM[2 * k + 1]!];
    sum += kernels[k]!(dx * dx + dy * dy);
  }
  return sum / kernels.length;
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

/** Volt at a point per ampere from segment j. */
function segmentOhm(segments: Segments, set: ImageSet, j: number, [x, y, z]: SoilPoint): number {
  const { middleM, along, lengthM, radiusM } = segments;
  const dx = x - middleM[3 * j]!;
  const dy = y - middleM[3 * j + 1]!;
  const level = dx * dx + dy * dy;
  const [length, width] = [lengthM[j]!, radiusM[j]! * radiusM[j]!];
  const levelAlong = along[3 * j]! * dx + along[3 * j + 1]! * dy;
  const down = along[3 * j + 2]!;
  const { count, strengthOhmM, sign, offsetM } = set;
  let sum = 0;
  for (let k = 0; k < count; k++) {
    const dz = z - offsetM[k]! - sign[k]! * middleM[3 * j + 2]!;
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
