import type { ImageSet, SoilImages } from '../soil/layer-images.ts';
import { meanInverseDistance } from './line-pair.ts';
import type { Segments } from './segments.ts';

/**
 * Mean potential of each segment per ampere from each other (ohm), row by row, symmetric: Galerkin boundary elements with
 * even leakage along each segment; what a sheath adds stands on the diagonal. A segment has all the images of its layer;
 * near ones as lines, far ones by their second moments.
 *
 * Source: R. F. Harrington, Field Computation by Moment Methods (1968), section 2 (from memory); images: `soilImages`.
 */
export function influenceMatrix(segments: Segments, images: SoilImages): Float64Array {
  const { count, layer, sheathOhm } = segments;
  const matrix = new Float64Array(count * count);
  const layers = images.soil.resistivityOhmM.length;
  const sets: (ImageSet | undefined)[] = new Array(layers * layers);
  for (let row = 0; row < count; row++) {
    for (let column = 0; column <= row; column++) {
      const at = layer[column]! * layers + layer[row]!;
      const set = sets[at] ?? images.between(layer[column]!, layer[row]!);
      sets[at] = set;
      const ohm = pairOhm(segments, set, row, column);
      matrix[row * count + column] = ohm;
      matrix[column * count + row] = ohm;
    }
    matrix[row * count + row] = matrix[row * count + row]! + sheathOhm[row]!;
  }
  return matrix;
}

/** Square of the distance, in lengths of the longer segment, from which second moments do. */
const farSquared = 16;

/** Segment `i` under all images of segment `j`. */
function pairOhm({ middleM, along, lengthM, radiusM }: Segments, set: ImageSet, i: number, j: number): number {
  const [pi, pj] = [3 * i, 3 * j];
  const [lengthI, lengthJ] = [lengthM[i]!, lengthM[j]!];
  const dx = middleM[pi]! - middleM[pj]!;
  const dy = middleM[pi + 1]! - middleM[pj + 1]!;
  const [zi, zj] = [middleM[pi + 2]!, middleM[pj + 2]!];
  const [ix, iy, iz] = [along[pi]!, along[pi + 1]!, along[pi + 2]!];
  const [jx, jy, jz] = [along[pj]!, along[pj + 1]!, along[pj + 2]!];
  const level = dx * dx + dy * dy;
  const levelI = ix * dx + iy * dy;
  const levelJ = jx * dx + jy * dy;
  const longest = Math.max(lengthI, lengthJ);
  const far = farSquared * longest * longest;
  const momentI = (lengthI * lengthI) / 24;
  const momentJ = (lengthJ * lengthJ) / 24;
  const width = (radiusM[i]! * radiusM[i]! + radiusM[j]! * radiusM[j]!) / 2;
  const { count, strengthOhmM, sign, offsetM } = set;
  let sum = 0;
  for (let k = 0; k < count; k++) {
    const mirrored = sign[k]!;
    const dz = zi - offsetM[k]! - mirrored * zj;
    const squared = level + dz * dz;
    if (squared < far) {
      const near = meanInverseDistance(dx, dy, dz, ix, iy, iz, lengthI, jx, jy, mirrored * jz, lengthJ, width);
      sum += strengthOhmM[k]! * near;
      continue;
    }
    const inverse = 1 / squared;
    const alongI = levelI + iz * dz;
    const alongJ = levelJ + mirrored * jz * dz;
    const moments = momentI * (3 * alongI * alongI * inverse - 1) + momentJ * (3 * alongJ * alongJ * inverse - 1);
    sum += strengthOhmM[k]! * Math.sqrt(inverse) * (1 + moments * inverse);
  }
  return sum;
}
