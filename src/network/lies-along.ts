import type { Run, SoilPoint } from '../electrodes/body.ts';

/** Nearer than this, in radii of both together, two wires are one in the soil. */
const touchingRadii = 2;

/** Whether all of these runs lie on others, end to end. */
export function liesAlong(runs: readonly Run[], others: readonly Run[]): boolean {
  return runs.every(({ from, to, radiusM }) =>
    tried.every((share) => {
      const point = [0, 1, 2].map((axis) => from[axis]! + share * (to[axis]! - from[axis]!)) as unknown as SoilPoint;
      return others.some((other) => distanceM(point, other) <= touchingRadii * (radiusM + other.radiusM));
    }),
  );
}
const tried = [0, 0.25, 0.5, 0.75, 1];

/** From a point to a straight run. */
function distanceM(point: SoilPoint, { from, to }: Run): number {
  const [x, y, z] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const [dx, dy, dz] = [point[0] - from[0], point[1] - from[1], point[2] - from[2]];
  const along = (dx * x + dy * y + dz * z) / (x * x + y * y + z * z);
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(dx - share * x, dy - share * y, dz - share * z);
}
