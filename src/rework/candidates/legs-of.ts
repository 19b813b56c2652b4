import type { Scene } from './scene.ts';

/** Legs of a mast; of a lattice tower whose legs nobody counted the fewest that stand. */
export function legsOf(scene: Scene, mast: string): number {
  const part = scene.part(mast);
  const counted = Number(part?.typed.legs ?? Number.NaN);
  return Number.isInteger(counted) ? counted : part?.kind === 'lattice tower' ? 3 : 1;
}
