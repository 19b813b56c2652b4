import { ownerOf, type Scene } from './scene.ts';
import { straightWay, type WayToLay, wayToLay } from './way-to-lay.ts';

export interface Pair {
  readonly from: string;
  readonly to: string;
  /** null: nobody knows how far it is, or no way is open. */
  readonly way: WayToLay | null;
}

/** How many of the pairs that are nearest in a straight line are routed at most. */
const mostRouted = 8;

/** The two landings with the shortest way between them; where no place is known the first of each, outdoors before indoors. */
export function shortestPair(scene: Scene, from: readonly string[], to: readonly string[]): Pair | null {
  const pairs = from.flatMap((a) => to.map((b): Pair => ({ from: a, to: b, way: straightWay(scene, a, b) })));
  const near = pairs.filter((p) => p.way !== null).sort((p, q) => p.way!.lengthM - q.way!.lengthM);
  let best: Pair | null = null;
  for (const p of near.slice(0, mostRouted)) {
    // no way is shorter than a straight line
    if (best !== null && best.way!.lengthM <= p.way!.lengthM) break;
    const way = wayToLay(scene, p.from, p.to);
    if (way !== null && (best === null || way.lengthM < best.way!.lengthM)) best = { ...p, way };
  }
  if (best !== null) return best;
  const [a, b] = [from, to].map((points) => points.find((p) => !isIndoors(scene, p)) ?? points[0]);
  return a === undefined || b === undefined ? null : { from: a, to: b, way: null };
}

function isIndoors(scene: Scene, point: string): boolean {
  const where = scene.part(ownerOf(point))?.where ?? null;
  return where !== null && where !== 'outside';
}
