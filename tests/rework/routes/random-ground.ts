import type { Ground } from '../../../src/rework/routes/ground.ts';
import type { Point } from '../../../src/rework/routes/point.ts';
import type { RouteEnd } from '../../../src/rework/routes/shortest-routes.ts';

/** Numbers from 0 to 1, the same for the same seed (mulberry32). */
export function seededNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A rectangle turned by any angle, counterclockwise. */
export function turnedBox(next: () => number, widthM = 10): readonly Point[] {
  const [e, n, angle] = [next() * widthM, next() * widthM, next() * Math.PI];
  const [long, wide] = [0.5 + next() * widthM * 0.2, 0.3 + next() * widthM * 0.12];
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const corners = [
    [-long, -wide],
    [long, -wide],
    [long, wide],
    [-long, wide],
  ] as const;
  return corners.map(([x, y]): Point => [e + x * c - y * s, n + x * s + y * c]);
}

export interface Layout {
  readonly ends: readonly Point[];
  readonly buildings: readonly (readonly Point[])[];
}

/** Ends outside turned rectangles, which may overlap. */
export function randomLayout(next: () => number, ends: number, buildings: number): Layout {
  const boxes = Array.from({ length: buildings }, () => turnedBox(next));
  const places: Point[] = [];
  while (places.length < ends) {
    const p: Point = [next() * 10, next() * 10];
    if (!boxes.some((box) => isInConvex(box, p, 0.01))) places.push(p);
  }
  return { ends: places, buildings: boxes };
}

/** Whether p lies in a convex shape, or within a margin of it. */
export function isInConvex(corners: readonly Point[], p: Point, marginM = 0): boolean {
  return corners.every((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const side = Math.hypot(b[0] - a[0], b[1] - a[1]);
    return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > -marginM * side;
  });
}

export function groundOf({ buildings }: Layout, clearanceM = 0): Ground {
  const areas = buildings.map((cornersM, i) => ({ id: `house-${i}`, cornersM, clearanceM }));
  return { areas, barriers: [], trenches: [] };
}

export function endsOf(places: readonly Point[]): readonly RouteEnd[] {
  return places.map((p, i) => ({ id: `end-${i}`, placesM: [p] }));
}
