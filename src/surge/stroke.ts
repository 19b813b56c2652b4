import { within } from './positive.ts';
import type { HeidlerWave } from './wave.ts';
import { wave0p25x100, wave1x200, wave10x350 } from './wave-presets.ts';

/** Strokes that standards give a wave of its own: 10/350, 1/200, 0.25/100. */
export const strokeKinds = ['first-positive', 'first-negative', 'subsequent'] as const;
export type StrokeKind = (typeof strokeKinds)[number];

/** One stroke of a flash as it enters the ground: its kind and its wave. */
export interface Stroke {
  readonly kind: StrokeKind;
  readonly wave: HeidlerWave;
}

/** Peaks of strokes that are taken, ampere. MIL-HDBK-419A Table 3-1 (read) has 1 to 250 kA; this far outside it is a slip. */
export const strokePeakLimitsA = { low: 100, high: 1e6 } as const;

const shapes = { 'first-positive': wave10x350, 'first-negative': wave1x200, subsequent: wave0p25x100 } as const;

/** A stroke of a kind and a nominal peak, ampere. RangeError for a peak that no stroke has: below 100 A, above 1 MA. */
export function stroke(kind: StrokeKind, peakA: number): Stroke {
  within(peakA, strokePeakLimitsA.low, strokePeakLimitsA.high, 'peak of a stroke, ampere,');
  return { kind, wave: shapes[kind](peakA) };
}
