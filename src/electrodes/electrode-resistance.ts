import { type Interval, middle } from '../math/interval.ts';
import type { SoilLayers } from '../soil/layers.ts';
import type { ClosedForm, Figures } from './closed-form.ts';
import { closedFormOf } from './closed-form-of.ts';
import type { ElectrodeShape, FormulaSource } from './electrode.ts';
import { overRange } from './over-range.ts';
import { resistivityAlong, resistivityBounds } from './resistivity-along.ts';

/** A resistance worked out from a shape and the soil. */
export interface WorkedOutOhm {
  /** At the middle of every range; null where one of them is open-ended, or a layer's thickness is unknown. */
  readonly value: number | null;
  /** `high` may be Infinity. */
  readonly low: number;
  readonly high: number;
}

export interface ElectrodeResistance {
  /** null: something is missing, or outside what the formula holds for. */
  readonly ohm: WorkedOutOhm | null;
  /** Names of the figures that have to be known first. */
  readonly missing: readonly string[];
  /** Names of the figures that the formula does not hold for. */
  readonly outOfRange: readonly string[];
  readonly formula: string;
  readonly source: FormulaSource;
  /** Where the true figure lies in uniform soil, relative to the formula's; not applied to `ohm`. null: not examined. */
  readonly errorShare: Interval | null;
}

/**
 * Resistance of one electrode alone to remote earth (ohm), by a closed form for its kind. `low` and `high` are for figures
 * anywhere in their ranges and uniform soil of the lowest and of the highest resistivity of any layer, which bounds layered
 * soil; `value` takes the resistivity along the electrode (see `resistivityAlong`).
 */
export function electrodeResistance(shape: ElectrodeShape, soil: SoilLayers): ElectrodeResistance {
  const form = closedFormOf(shape);
  const { formula, source, errorShare } = form;
  const answer = { ohm: null, missing: [], outOfRange: [], formula, source, errorShare };
  const soilOhmM = resistivityBounds(soil);
  const missing = [
    ...Object.keys(form.figures).filter((name) => form.figures[name] === null),
    ...form.alsoMissing,
    ...(soilOhmM === null ? ['soil.layers'] : []),
  ];
  if (missing.length > 0 || soilOhmM === null) return { ...answer, missing };
  const ranges = form.figures as Readonly<Record<string, Interval>>;
  const figures = likelyFigures(ranges);
  const outOfRange = form.outOfRange(figures);
  if (outOfRange.length > 0) return { ...answer, outOfRange };
  if (form.perOhmM(figures) === null) return { ...answer, outOfRange: ['spacingM'] };
  const along = resistivityAlong(soil, ...form.spanM(figures));
  const isOpen = Object.values(ranges).some((range) => middle(range) === null);
  const value = isOpen || !along.ok || along.ohmM === null ? null : ohmAt(form, figures, along.ohmM);
  return { ...answer, missing: along.ok ? [] : [along.missing], ohm: { value, ...boundsOf(form, ranges, soilOhmM) } };
}

/** The middle of each range, the lower end of an open one. */
export function likelyFigures(ranges: Readonly<Record<string, Interval>>): Figures {
  return Object.fromEntries(Object.entries(ranges).map(([name, range]) => [name, middle(range) ?? range.low]));
}

function ohmAt(form: ClosedForm, figures: Figures, soilOhmM: number): number {
  return soilOhmM * form.perOhmM(figures)! + form.insideOhm(figures);
}

function boundsOf(form: ClosedForm, ranges: Readonly<Record<string, Interval>>, soil: Interval): Interval {
  const { range, open } = overRange(ranges, (figures) => {
    if (form.outOfRange(figures).length > 0 || form.perOhmM(figures) === null) return null;
    return { low: ohmAt(form, figures, soil.low), high: ohmAt(form, figures, soil.high) };
  });
  if (range === null) return { low: 0, high: Infinity };
  // more metal or more depth only lowers it, a poorer filling only raises it
  return {
    low: open.some((name) => !name.endsWith('OhmM')) ? 0 : range.low,
    high: open.some((name) => name.endsWith('OhmM')) ? Infinity : range.high,
  };
}
