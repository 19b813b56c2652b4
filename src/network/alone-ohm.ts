import type { ElectrodeResistance } from '../electrodes/electrode-resistance.ts';
import { type EnclosingSoils, solvedResistance, type Way, type WhyUnsolved } from '../electrodes/solved-resistance.ts';
import type { Electrode } from '../site/site.ts';
import { middle } from '../units/interval.ts';
import { lazily } from '../units/lazily.ts';
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
  /** Why nothing is known of it though nothing is missing; null: something is. */
  readonly unsolved: WhyUnsolved | null;
}

/**
 * Stated where the owner states it as measured alone (an instrument over its range bounds it from below by nothing known),
 * else solved in the soil. In a condition of the ground (`typed`: the soil without it; null: as it is) what was measured
 * changes as the same electrode would by the solve.
 */
export function aloneOhm(
  e: Electrode,
  soils: EnclosingSoils | null,
  way: Way | null,
  typed: EnclosingSoils | null = null,
): AloneOhm {
  if (e.resistance !== null && e.measured !== 'bonded') {
    const measured = stated(e.resistance);
    return typed === null ? measured : changed(measured, e, way, { soils, typed });
  }
  const shape = electrodeShape(e);
  if (shape === null) return unknown(['resistance']);
  const solved = solvedResistance(shape, soils, way);
  const { ohm, missing, outOfRange, formula, source } = solved;
  if (ohm === null) return unknown([...missing, ...outOfRange]);
  return lazily<AloneOhm>({
    ohm: () => ohm,
    how: () => 'computed',
    formula: () => formula,
    source: () => source,
    missing: () => missing,
    unsolved: () => solved.unsolved,
  });
}

function stated({ ohm, overRange }: NonNullable<Electrode['resistance']>): AloneOhm {
  const value = overRange ? null : middle(ohm);
  return {
    ohm: { value, low: ohm.low, high: ohm.high },
    how: 'stated',
    formula: null,
    source: null,
    missing: [],
    unsolved: null,
  };
}

function changed(
  measured: AloneOhm,
  e: Electrode,
  way: Way | null,
  { soils, typed }: { readonly soils: EnclosingSoils | null; readonly typed: EnclosingSoils },
): AloneOhm {
  const shape = electrodeShape(e);
  if (shape === null || measured.ohm === null) return measured;
  const [now, before] = [soils, typed].map((soil) => solvedResistance(shape, soil, way).ohm);
  if (now == null || before == null) return measured;
  const likely = now.value === null || before.value === null ? null : now.value / before.value;
  const times = [now.low / before.low, likely ?? Number.NaN, now.high / before.high].filter(Number.isFinite);
  if (times.length === 0) return measured;
  const { low, value, high } = measured.ohm;
  const ohm = {
    low: low * Math.min(...times),
    value: value === null || likely === null ? null : value * likely,
    high: high * Math.max(...times),
  };
  return { ...measured, ohm };
}

function unknown(missing: readonly string[]): AloneOhm {
  return { ohm: null, how: 'unknown', formula: null, source: null, missing, unsolved: null };
}
