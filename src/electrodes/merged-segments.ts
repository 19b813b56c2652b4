import { endsOf, type Segments } from './segments.ts';

/** A matrix for fewer, longer segments. */
export interface MergedSegments {
  readonly matrix: Float64Array;
  /** Body of each. */
  readonly body: Int32Array;
  /** Stretches of wire within one layer without a sharp bend, as segments in order. */
  readonly stretches: readonly (readonly number[])[];
}

/**
 * An influence matrix with neighbours of the same stretch taken together two by two, the last of an odd number three by
 * three: the current of all of them spread evenly over all. Averages of averages, so that nothing is worked out anew.
 */
export function merged(matrix: Float64Array, segments: Segments): MergedSegments {
  const { count, body, lengthM } = segments;
  const stretches = stretchesOf(segments);
  const groups = stretches.flatMap(pairsOf);
  const shares = new Float64Array(count);
  for (const group of groups) {
    const whole = group.reduce((sum, i) => sum + lengthM[i]!, 0);
    for (const i of group) shares[i] = lengthM[i]! / whole;
  }
  const size = groups.length;
  const coarse = new Float64Array(size * size);
  groups.forEach((rows, row) => {
    for (let column = 0; column <= row; column++) {
      let sum = 0;
      for (const a of rows) for (const b of groups[column]!) sum += shares[a]! * shares[b]! * matrix[a * count + b]!;
      coarse[row * size + column] = sum;
      coarse[column * size + row] = sum;
    }
  });
  return { matrix: coarse, body: Int32Array.from(groups, (group) => body[group[0]!]!), stretches };
}

function pairsOf(stretch: readonly number[]): readonly (readonly number[])[] {
  const groups: (readonly number[])[] = [];
  for (let first = 0; first < stretch.length; first += groups.at(-1)!.length) {
    groups.push(stretch.slice(first, stretch.length - first === 3 ? stretch.length : first + 2));
  }
  return groups;
}

function stretchesOf(segments: Segments): readonly (readonly number[])[] {
  const stretches: number[][] = [];
  for (let i = 0; i < segments.count; i++) {
    if (i > 0 && goesOn(segments, i)) stretches.at(-1)!.push(i);
    else stretches.push([i]);
  }
  return stretches;
}

/** Cosine of the bend up to which runs end to end are one wire: an octagon is a ring. */
const leastCosine = 0.7;

/** Whether a segment continues the one before it. */
function goesOn(segments: Segments, i: number): boolean {
  const { run, layer, body, along, lengthM } = segments;
  if (layer[i] !== layer[i - 1] || body[i] !== body[i - 1]) return false;
  if (run[i] === run[i - 1]) return true;
  const [a, b] = [3 * (i - 1), 3 * i];
  const cosine = along[a]! * along[b]! + along[a + 1]! * along[b + 1]! + along[a + 2]! * along[b + 2]!;
  if (cosine < leastCosine) return false;
  const [end, start] = [endsOf(segments, i - 1)[1], endsOf(segments, i)[0]];
  return Math.hypot(end[0] - start[0], end[1] - start[1], end[2] - start[2]) < 1e-6 * lengthM[i]!;
}
