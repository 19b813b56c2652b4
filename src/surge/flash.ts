import { notNegative, positive, within } from './positive.ts';
import { type Stroke, stroke } from './stroke.ts';
import { levelFigures, type ProtectionLevel, strokeAtLevel } from './stroke-levels.ts';
import { type WaveIntegrals, waveIntegrals } from './wave-integrals.ts';

/** A flash for heating: its strokes, how often each comes, and the current that flows on between or after them. */
export interface Flash {
  readonly strokes: readonly { readonly stroke: Stroke; readonly count: number }[];
  /** A steady current for a time; null: none. */
  readonly continuing: { readonly currentA: number; readonly durationS: number } | null;
}

/** Most strokes that a flash was seen to have: MIL-HDBK-419A Table 3-1 (read). */
export const mostStrokes = 26;

/** Strokes of a usual negative flash: 3 to 5, CIGRE TB 549 in its summary (read). */
export const usualStrokes = { low: 3, high: 5 } as const;

/**
 * Charge and action integral of a flash: the sum over its strokes and the continuing current. Heat adds up like this in a
 * conductor that loses none between strokes, 40 to 60 ms apart: the high side for thin wire in free air.
 */
export function flashIntegrals({ strokes, continuing }: Flash): WaveIntegrals {
  let [chargeC, specificEnergyJPerOhm] = [0, 0];
  for (const { stroke: one, count } of strokes) {
    const of = waveIntegrals(one.wave);
    chargeC += count * of.chargeC;
    specificEnergyJPerOhm += count * of.specificEnergyJPerOhm;
  }
  if (continuing === null) return { chargeC, specificEnergyJPerOhm };
  const currentA = notNegative(continuing.currentA, 'continuing current');
  const durationS = notNegative(continuing.durationS, 'its duration');
  return {
    chargeC: chargeC + currentA * durationS,
    specificEnergyJPerOhm: specificEnergyJPerOhm + currentA ** 2 * durationS,
  };
}

/** A negative flash of so many strokes in all: the first of one peak, the others of another, ampere. */
export function negativeFlash(firstA: number, subsequentA: number, strokeCount: number): Flash {
  within(strokeCount, 1, mostStrokes, 'strokes of a flash');
  if (!Number.isInteger(strokeCount)) throw new RangeError(`no part of a stroke: ${strokeCount}`);
  const first = { stroke: stroke('first-negative', firstA), count: 1 };
  if (strokeCount === 1) return { strokes: [first], continuing: null };
  const others = { stroke: stroke('subsequent', subsequentA), count: strokeCount - 1 };
  return { strokes: [first, others], continuing: null };
}

/** The negative flash of a protection level: its first and subsequent impulses at their greatest, so many strokes in all. */
export function negativeFlashAtLevel(level: ProtectionLevel, strokeCount: number): Flash {
  const { firstNegativeA, subsequentA } = levelFigures(level)!;
  return negativeFlash(firstNegativeA, subsequentA, strokeCount);
}

/** The positive flash of a protection level: one impulse 10/350, then the long stroke as a steady current. */
export function positiveFlashAtLevel(level: ProtectionLevel): Flash {
  const { longStrokeC, longStrokeS } = levelFigures(level)!;
  const { kind, wave } = strokeAtLevel('first-positive', level);
  return {
    strokes: [{ stroke: { kind, wave }, count: 1 }],
    continuing: { currentA: longStrokeC / positive(longStrokeS, 'duration'), durationS: longStrokeS },
  };
}
