import type { StudyPart } from '../../study/study.ts';
import { ownerOf, type Scene } from './scene.ts';

export type Spot = readonly [number, number];

/** Where metal between two points could run; null: the file does not say where one of them is. */
export interface WayToLay {
  readonly routeM: readonly Spot[];
  readonly lengthM: number;
}

export function wayToLay(scene: Scene, from: string, to: string): WayToLay | null {
  const a = spotsOf(scene.part(ownerOf(from)));
  const b = spotsOf(scene.part(ownerOf(to)));
  const ways = a.flatMap((p) => b.map((q): WayToLay => ({ routeM: [p, q], lengthM: apartM(p, q) })));
  return ways.length === 0 ? null : ways.reduce((best, way) => (way.lengthM < best.lengthM ? way : best));
}

/** Places at which a part can be met: its own, and the points of its route. */
export function spotsOf(part: StudyPart | undefined): readonly Spot[] {
  if (part === undefined) return [];
  if (part.routeM.length > 0) return part.routeM.map(([east, north]) => [east, north]);
  return part.positionM === null ? [] : [[part.positionM[0], part.positionM[1]]];
}

export function apartM([aE, aN]: Spot, [bE, bN]: Spot): number {
  return Math.hypot(bE - aE, bN - aN);
}
