import { factorCholesky, solveFactored } from '../math/dense.ts';
import { mutualOfRods, type VerticalRod } from './rod.ts';

export type RodLayout = 'line' | 'triangle' | 'square' | 'ring' | 'star';

/**
 * Equal rods joined into one electrode, ohm per ohm metre: one even current per rod, all at one potential. null where two
 * rods are nearer than they can be. Range: spacing above the diameter; the ratio to a single rod is within 0.3 % of a full
 * solution for spacings of one length and more.
 *
 * Source: each pair by Dwight's closed forms (1936), joined by circuit theory: 1 / (1' M^-1 1).
 */
export function rodGroup(
  rod: VerticalRod,
  diameterM: number,
  positions: readonly (readonly [number, number])[],
): number | null {
  const size = positions.length;
  const matrix = new Float64Array(size * size);
  for (const [i, [eastM, northM]] of positions.entries()) {
    for (const [j, [otherEastM, otherNorthM]] of positions.entries()) {
      const distanceM = i === j ? diameterM / 2 : Math.hypot(eastM - otherEastM, northM - otherNorthM);
      if (i !== j && distanceM < diameterM) return null;
      matrix[i * size + j] = mutualOfRods(rod, rod, distanceM);
    }
  }
  const factor = factorCholesky(matrix, size);
  if (!factor.ok) return null;
  const { solution } = solveFactored(factor, new Float64Array(size).fill(1));
  return 1 / solution.reduce((sum, share) => sum + share, 0);
}

/** Where the rods stand, round the centre. A closed layout is walked from a corner in steps of the spacing. */
export function rodPositions(
  layout: RodLayout,
  count: number,
  spacingM: number,
): readonly (readonly [eastM: number, northM: number])[] {
  const all = Array.from({ length: count }, (_, at) => at);
  if (layout === 'line') return all.map((at) => [(at - (count - 1) / 2) * spacingM, 0]);
  if (layout === 'ring') return all.map((at) => onCircle(ringRadiusM(count, spacingM), at, count));
  if (layout === 'star') return all.map((at) => (at === 0 ? [0, 0] : onCircle(spacingM, at, count - 1)));
  const sides = layout === 'triangle' ? 3 : 4;
  return all.map((at) => onPolygon(sides, (count * spacingM) / sides, at * spacingM));
}

/** Spacing that puts a layout of so many rods on a circle of the radius; null for a line. */
export function spacingFromRadius(layout: RodLayout, count: number, radiusM: number): number | null {
  if (layout === 'line') return null;
  if (layout === 'star') return radiusM;
  if (layout === 'ring') return 2 * radiusM * Math.sin(Math.PI / count);
  const sides = layout === 'triangle' ? 3 : 4;
  return (2 * radiusM * Math.sin(Math.PI / sides) * sides) / count;
}

/** Radius of a ring whose neighbours are so far apart in a straight line. */
function ringRadiusM(count: number, spacingM: number): number {
  return count < 2 ? 0 : spacingM / (2 * Math.sin(Math.PI / count));
}

function onCircle(radiusM: number, at: number, count: number): readonly [number, number] {
  const angle = (2 * Math.PI * at) / count;
  return [radiusM * Math.cos(angle), radiusM * Math.sin(angle)];
}

function onPolygon(sides: number, sideM: number, walkedM: number): readonly [number, number] {
  const cornerM = sideM / (2 * Math.sin(Math.PI / sides));
  const side = Math.min(sides - 1, Math.floor(walkedM / sideM + 1e-9));
  const share = walkedM / sideM - side;
  const [fromEastM, fromNorthM] = onCircle(cornerM, side, sides);
  const [toEastM, toNorthM] = onCircle(cornerM, side + 1, sides);
  return [fromEastM + share * (toEastM - fromEastM), fromNorthM + share * (toNorthM - fromNorthM)];
}
