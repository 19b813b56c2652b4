import type { Interval } from '../math/interval.ts';
import { layeredSoil } from '../soil/layered-soil.ts';
import { fittingBoundaries } from './fitting-boundaries.ts';
import { rodInLayers } from './rod-in-layers.ts';
import { type MeasuredRod, type RodReading, type TwoLayerRodFit, twoLayerRod } from './two-layer-rod.ts';

export interface RodDepthAnswer {
  /** Resistivity of uniform soil that the readings mean, each by itself: least and greatest, ohm metre. */
  readonly uniformOhmM: Interval;
  /** Whether one uniform soil has all readings within their error. */
  readonly fitsUniform: boolean;
  /** Soils of two layers that have all readings, by depth of the boundary. Empty where uniform soil does. */
  readonly layers: readonly TwoLayerRodFit[];
  /** What those span; null: there is none. */
  readonly boundaryM: Interval | null;
  readonly upperOhmM: Interval | null;
  readonly lowerOhmM: Interval | null;
  /** The one with its boundary where the drop was seen; null: no such depth, or none fits. */
  readonly atDrop: TwoLayerRodFit | null;
  /** Why there are no layers. */
  readonly reason: 'uniform' | 'one depth' | 'no two layers' | null;
}

export interface RodDepthOptions {
  /** Depth at which the resistance was seen to drop while the rod went down. */
  readonly dropM?: number | null;
  /** How far a reading may be off; default 0.05, what the readings of a fall-of-potential measurement may differ by. */
  readonly errorShare?: number;
  /** Default `rodInLayers`. */
  readonly solve?: MeasuredRod['solve'];
}

const usualError = 0.05;

/**
 * What soil a rod's own readings at several depths carry: uniform, or the two-layer soils that fit. Two readings leave one
 * of the three figures open, so that a range of boundaries fits; a drop seen at a depth settles it. A boundary in the last
 * ninth of the way to a depth of reading is not tried with two of them: there the figure of the layer that is hardly touched
 * runs away. Deeper ones than the rod ever was are not looked for. Throws RangeError for readings that are not above 0 ohm.
 */
export function rodDepthReadings(
  readings: readonly RodReading[],
  radiusM: number,
  options: RodDepthOptions = {},
): RodDepthAnswer {
  if (readings.length === 0 || !readings.every(({ ohm }) => ohm > 0 && Number.isFinite(ohm))) {
    throw new RangeError('readings are above 0 ohm');
  }
  const { dropM = null, errorShare = usualError, solve = rodInLayers } = options;
  const inOrder = [...readings].sort((a, b) => a.lengthM - b.lengthM || a.ohm - b.ohm);
  const uniformOhmM = spanOf(inOrder.map(({ lengthM, ohm }) => ohm / solve(lengthM, radiusM, layeredSoil([1]))))!;
  const fitsUniform = uniformOhmM.high * (1 - errorShare) <= uniformOhmM.low * (1 + errorShare);
  const depthsM = [...new Set(inOrder.map(({ lengthM }) => lengthM))];
  // readings at one depth that differ are no uniform soil either
  const noLayers = depthsM.length === 1 ? 'one depth' : fitsUniform ? 'uniform' : null;
  const without = { uniformOhmM, fitsUniform, layers: [], boundaryM: null, upperOhmM: null, lowerOhmM: null };
  if (noLayers !== null) return { ...without, atDrop: null, reason: noLayers };
  const fitAt = (boundaryM: number) => twoLayerRod({ readings: inOrder, radiusM, solve }, boundaryM);
  const layers = fittingBoundaries(fitAt, depthsM, errorShare);
  const atDrop = dropM === null ? null : fitAt(dropM);
  return {
    uniformOhmM,
    fitsUniform,
    layers,
    boundaryM: spanOf(layers.map((fit) => fit.boundaryM)),
    upperOhmM: spanOf(layers.map((fit) => fit.upperOhmM)),
    lowerOhmM: spanOf(layers.map((fit) => fit.lowerOhmM)),
    atDrop: atDrop !== null && atDrop.worstShare <= errorShare ? atDrop : null,
    reason: layers.length === 0 ? 'no two layers' : null,
  };
}

function spanOf(figures: readonly number[]): Interval | null {
  return figures.length === 0 ? null : { low: Math.min(...figures), high: Math.max(...figures) };
}
