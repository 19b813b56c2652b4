import type { SoilImages } from '../soil/layer-images.ts';
import { meanInverseDistance } from './line-pair.ts';
import type { Segments } from './segments.ts';
import { type SortedImages, sortedImages, tailPotential } from './sorted-images.ts';

/**
 * Mean potential of each segment per ampere from each other (ohm), row by row, symmetric: Galerkin boundary elements with
 * even leakage along each segment; what a sheath adds stands on the diagonal. A segment has all the images of its layer;
 * near ones as lines, far ones by their second moments, very far ones all at once by a polynomial.
 *
 * Source: R. F. Harrington, Field Computation by Moment Methods (1968), section 2 (from memory); images: `soilImages`.
 */
export function influenceMatrix(segments: Segments, images: SoilImages): Float64Array {
  const matrix = influenceRows(segments, images, 0);
  mirror(matrix, segments.count);
  return matrix;
}

/** Rows of the same from `firstRow` on, each up to its own segment: what lies right of it is 0. */
export function influenceRows(segments: Segments, images: SoilImages, firstRow: number): Float64Array {
  const { count, layer, sheathOhm } = segments;
  const rows = new Float64Array((count - firstRow) * count);
  const nearness = nearnessIn(images);
  let near = new Int32Array(0);
  for (let row = firstRow; row < count; row++) {
    const into = rows.subarray((row - firstRow) * count, (row - firstRow + 1) * count);
    // segments of one layer come in stretches, and a stretch has one set of images
    for (let first = 0, end = 0; first <= row; first = end) {
      while (end <= row && layer[end] === layer[first]) end++;
      const set = sortedImages(images.between(layer[first]!, layer[row]!));
      if (near.length < (end - first) * set.count) near = new Int32Array(count * set.count);
      const nearCount = addFar(into, segments, set, row, first, end, nearness, near);
      addNear(into, segments, set, row, nearness, near.subarray(0, nearCount));
    }
    into[row] = into[row]! + sheathOhm[row]!;
  }
  return rows;
}

/**
 * Square of the distance, in lengths of the longer segment, from which second moments do: they are out by 3e-4 there, and
 * by the fourth power less further off.
 */
const farSquared = 16;
/** The same for the halves of both lines: their middles may be half a length nearer, which leaves four of their lengths. */
const halvesSquared = 6.25;
/**
 * Square of an image's offset, in distances of the pair or in four lengths of the longer segment, from which a polynomial of
 * six terms does: it is out by 2e-5 of the direct field there, and by the seventh power less further off.
 */
const tailSquared = 25;

/**
 * What these squares are multiplied by. Beside a layer that conducts far better, the images of a segment take off all of its
 * own field but a share of one over their contrast; each has to be met by so much better, so that what is left is.
 */
function nearnessIn({ soil }: SoilImages): number {
  const contrast = Math.max(...soil.resistivityOhmM) / Math.min(...soil.resistivityOhmM);
  return Math.sqrt(Math.max(1, contrast / 30));
}

/**
 * Segment `row` under all far images of segments [first, end). Near ones are written down in `near` for `addNear`, as
 * segment * images + image, and counted: without a call, all of this loop stays in registers.
 *
 * A far image: (1 + m) / distance with m = sum over both lines of (l^2 / 24) (3 c^2 - 1) / distance^2, c the cosine of the
 * line with the way between; in the difference in depth c^2 is a polynomial, so that an image takes one division and one
 * root.
 */
function addFar(
  into: Float64Array,
  { middleM, along, lengthM }: Segments,
  { strengthOhmM, sign, offsetM, tails, count: images }: SortedImages,
  row: number,
  first: number,
  end: number,
  nearness: number,
  near: Int32Array,
): number {
  let nearCount = 0;
  let cut = images;
  const i = 3 * row;
  const lengthI = lengthM[row]!;
  const momentI = (lengthI * lengthI) / 8;
  for (let column = first; column < end; column++) {
    const j = 3 * column;
    const dx = middleM[i]! - middleM[j]!;
    const dy = middleM[i + 1]! - middleM[j + 1]!;
    const zi = middleM[i + 2]!;
    const zj = middleM[j + 2]!;
    const iz = along[i + 2]!;
    const jz = along[j + 2]!;
    const lengthJ = lengthM[column]!;
    const momentJ = (lengthJ * lengthJ) / 8;
    const level = dx * dx + dy * dy;
    const levelI = along[i]! * dx + along[i + 1]! * dy;
    const levelJ = along[j]! * dx + along[j + 1]! * dy;
    const upright = momentI * iz * iz + momentJ * jz * jz;
    const fixed = upright - (momentI + momentJ) / 3;
    const across = momentI * levelI * levelI + momentJ * levelJ * levelJ - upright * level;
    const slopeI = 2 * momentI * levelI * iz;
    const slopeJ = 2 * momentJ * levelJ * jz;
    const longest = Math.max(lengthI, lengthJ);
    const far = nearness * farSquared * longest * longest;
    const tail = tailSquared * Math.max(far, nearness * (level + (zi + zj) * (zi + zj)));
    while (cut > 0 && offsetM[cut - 1]! * offsetM[cut - 1]! >= tail) cut--;
    while (cut < images && offsetM[cut]! * offsetM[cut]! < tail) cut++;
    let ohm = cut < images ? tailPotential(tails, cut, level, zi - zj, zi + zj) : 0;
    for (let k = 0; k < cut; k++) {
      const turn = sign[k]!;
      const dz = zi - offsetM[k]! - turn * zj;
      const squared = level + dz * dz;
      if (squared < far) {
        near[nearCount++] = column * images + k;
        continue;
      }
      const inverse = 1 / squared;
      const moments = (fixed + (across + (slopeI + turn * slopeJ) * dz) * inverse) * inverse;
      ohm += strengthOhmM[k]! * Math.sqrt(inverse) * (1 + moments);
    }
    into[column] = ohm;
  }
  return nearCount;
}

/** Adds what `addFar` left. */
function addNear(
  into: Float64Array,
  segments: Segments,
  set: SortedImages,
  row: number,
  nearness: number,
  near: Int32Array,
): void {
  const fromHalves = nearness * halvesSquared;
  for (const at of near) {
    const column = Math.floor(at / set.count);
    const image = at - column * set.count;
    into[column] = into[column]! + set.strengthOhmM[image]! * nearMean(segments, set, row, column, image, fromHalves);
  }
}

/** Mean of 1 / distance of segment `i` from an image of segment `j`. */
function nearMean(
  segments: Segments,
  { sign, offsetM }: SortedImages,
  i: number,
  j: number,
  image: number,
  fromHalves: number,
): number {
  const { middleM, along, lengthM, radiusM } = segments;
  const turn = sign[image]!;
  const dx = middleM[3 * i]! - middleM[3 * j]!;
  const dy = middleM[3 * i + 1]! - middleM[3 * j + 1]!;
  const dz = middleM[3 * i + 2]! - offsetM[image]! - turn * middleM[3 * j + 2]!;
  const ax = along[3 * i]!;
  const ay = along[3 * i + 1]!;
  const az = along[3 * i + 2]!;
  const bx = along[3 * j]!;
  const by = along[3 * j + 1]!;
  const bz = turn * along[3 * j + 2]!;
  const a = lengthM[i]!;
  const b = lengthM[j]!;
  const longest = Math.max(a, b);
  if (dx * dx + dy * dy + dz * dz > fromHalves * longest * longest) {
    return meanOfHalves(dx, dy, dz, ax, ay, az, a / 4, bx, by, bz, b / 4);
  }
  const width = (radiusM[i]! * radiusM[i]! + radiusM[j]! * radiusM[j]!) / 2;
  return meanInverseDistance(dx, dy, dz, ax, ay, az, a, bx, by, bz, b, width);
}

/** By the second moments of the halves of both lines; quarters of the lengths are given. */
function meanOfHalves(
  dx: number,
  dy: number,
  dz: number,
  ax: number,
  ay: number,
  az: number,
  quarterA: number,
  bx: number,
  by: number,
  bz: number,
  quarterB: number,
): number {
  const momentA = (quarterA * quarterA) / 2;
  const momentB = (quarterB * quarterB) / 2;
  let sum = 0;
  for (let half = 0; half < 4; half++) {
    const a = half < 2 ? quarterA : -quarterA;
    const b = half % 2 === 0 ? quarterB : -quarterB;
    const x = dx + a * ax - b * bx;
    const y = dy + a * ay - b * by;
    const z = dz + a * az - b * bz;
    const inverse = 1 / (x * x + y * y + z * z);
    const alongA = ax * x + ay * y + az * z;
    const alongB = bx * x + by * y + bz * z;
    const across = momentA * alongA * alongA + momentB * alongB * alongB;
    sum += Math.sqrt(inverse) * (1 + (across * inverse - (momentA + momentB) / 3) * inverse);
  }
  return sum / 4;
}

/** Side of a square that both triangles keep in the cache. */
const side = 32;

/** Copies the lower triangle to the upper one, square by square. */
function mirror(matrix: Float64Array, count: number): void {
  for (let top = 0; top < count; top += side) {
    for (let left = 0; left <= top; left += side) {
      for (let row = top; row < Math.min(count, top + side); row++) {
        const end = Math.min(row, left + side);
        for (let column = left; column < end; column++) matrix[column * count + row] = matrix[row * count + column]!;
      }
    }
  }
}
