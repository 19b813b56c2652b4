import type { ElectrodeResistance } from '../electrodes/electrode-resistance.ts';
import { type EnclosingSoils, solvedResistance, type Way } from '../electrodes/solved-resistance.ts';
import type { Electrode } from '../site/site.ts';
import { middle } from '../units/interval.ts';
import { electrodeShape } from './electrode-shape.ts';

/** Resistance of one electrode alone to remote earth, and where it comes from. */
export interface AloneOhm {
  /** null: not known at all. */
  readonly ohm: { readonly value: number | null; readonly low: number; readonly high: number } | null;
  readonly how: 'computed' | 'stated' | 'unknown';
  readonly formula: string | null;
  readonly source: ElectrodeResistance['source'] | null;
  /** What has to be known first. */
  readonly missing: readonly string[];
}

/**
 * Stated where the owner states it as measured alone (an instrument over its range bounds it from below by nothing known),
 * else solved in the soil.
 */
export function aloneOhm(e: Electrode, soils: EnclosingSoils | null, way: Way | null): AloneOhm {
  if (e.resistance !== null && e.measured !== 'bonded') return stated(e.resistance);
  const shape = electrodeShape(e);
  if (shape === null) return unknown(['resistance']);
  const { ohm, missing, outOfRange, formula, source } = solvedResistance(shape, soils, way);
  if (ohm === null) return unknown([...missing, ...outOfRange]);
  return { ohm, how: 'computed', formula, source, missing };
}

function stated({ ohm, overRange }: NonNullable<Electrode['resistance']>): AloneOhm {
  const value = overRange ? null : middle(ohm);
  return { ohm: { value, low: ohm.low, high: ohm.high }, how: 'stated', formula: null, source: null, missing: [] };
}

function unknown(missing: readonly string[]): AloneOhm {
  return { ohm: null, how: 'unknown', formula: null, source: null, missing };
}
