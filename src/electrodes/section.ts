import type { Run } from './body.ts';
import type { Figures } from './closed-form.ts';
import type { EncasedShape, PipeShape, RingShape, StarShape, SurfaceStrapShape, WireShape } from './electrode.ts';

/** A conductor that lies level, cut across. */
export interface Section {
  readonly depthM: number;
  readonly radiusM: number;
  readonly sheath: Run['sheath'];
}

export type LevelShape = WireShape | PipeShape | RingShape | StarShape | SurfaceStrapShape | EncasedShape;

/**
 * Across a level conductor. A strap at grade is a round wire of a quarter of its width at depth 0: strap and mirror image
 * are then one strap in soil on both sides, which carries half its current down. A beam of concrete is as thick as a round
 * one of the same width and height together, its axis at half its height, the bar or the cage in its middle.
 *
 * Source: H. B. Dwight, Trans. AIEE 55 (1936) 1319-1328 (strap, from memory); IEEE Std 80-2000 clause 14.6 (concrete, from
 * memory).
 */
export function sectionOf(kind: LevelShape['kind'], f: Figures): Section {
  switch (kind) {
    case 'wire':
    case 'ring':
    case 'star':
      return { depthM: f.depthM!, radiusM: f.radiusM!, sheath: null };
    case 'pipe':
      return { depthM: f.depthM!, radiusM: f.diameterM! / 2, sheath: null };
    case 'surface strap':
      return { depthM: 0, radiusM: f.widthM! / 4, sheath: null };
    case 'encased':
      return {
        depthM: f.topM! + f.heightM! / 2,
        radiusM: (f.widthM! + f.heightM!) / 4,
        sheath: { resistivityOhmM: f.concreteOhmM!, coreRadiusM: f.coreDiameterM! / 2 },
      };
  }
}
