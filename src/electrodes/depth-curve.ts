import { boundariesM } from '../soil/layered-soil.ts';
import type { Run } from './body.ts';
import { influenceMatrix } from './influence-matrix.ts';
import { leadingOhm } from './leading-ohm.ts';
import type { ScaledSoil } from './scaled-soil.ts';
import { segmentsOf } from './segments.ts';

/**
 * Pieces of the shortest rod, and of what each longer one has more: its tip is cut as finely as it needs, and more finely
 * where layers meet.
 */
const firstPieces = 12;
const morePieces = 4;

/**
 * Resistance (ohm) of one upright rod at several lengths (m), its top at a depth; null where it is no rod. Layers show as
 * bends of the curve. The longest is solved, cut at each length: the others are the parts of it that begin at its top.
 */
export function depthCurve(
  { radiusM, topM }: { readonly radiusM: number; readonly topM: number },
  lengthsM: readonly number[],
  { factor, images }: ScaledSoil,
): readonly (number | null)[] {
  const isRod = (lengthM: number): boolean => lengthM > 2 * radiusM && lengthM < Number.POSITIVE_INFINITY;
  const rising = [...new Set(lengthsM.filter(isRod))].sort((a, b) => a - b);
  const runs = rising.map((lengthM, i): Run => {
    const [from, to] = [topM + (rising[i - 1] ?? 0), topM + lengthM];
    return { from: [0, 0, from], to: [0, 0, to], radiusM, sheath: null };
  });
  const boundaries = boundariesM(images.soil);
  const cutting = ({ from, to }: Run): number => {
    const meetsLayers = boundaries.some((depthM) => depthM > from[2] && depthM < to[2]);
    return from[2] === topM || meetsLayers ? firstPieces : morePieces;
  };
  const segments = segmentsOf([{ runs }], images.soil, cutting);
  const ohm = leadingOhm(influenceMatrix(segments, images), segments.count);
  return lengthsM.map((lengthM) => {
    const last = segments.run.lastIndexOf(rising.indexOf(lengthM));
    return ohm === null || last < 0 ? null : ohm[last]! * factor;
  });
}
