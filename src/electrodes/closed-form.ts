import type { Interval } from '../math/interval.ts';
import type { Figure, FormulaSource } from './electrode.ts';

/** Figures of one electrode, each a single number, by name. */
export type Figures = Readonly<Record<string, number>>;

/** How the resistance of one kind of electrode is worked out. */
export interface ClosedForm {
  /** The formula in one line. */
  readonly formula: string;
  readonly source: FormulaSource;
  /** Where the true figure lies, relative to the formula's, in uniform soil (-0.01: one per cent lower); null: not examined. */
  readonly errorShare: Interval | null;
  /** What the formula needs; null: not known. */
  readonly figures: Readonly<Record<string, Figure>>;
  /** What else has to be known before the formula can be used, such as a count. */
  readonly alsoMissing: readonly string[];
  /** Names of figures that the formula does not hold for. */
  readonly outOfRange: (figures: Figures) => readonly string[];
  /** Ohm per ohm metre of soil; null: the figures contradict each other. */
  readonly perOhmM: (figures: Figures) => number | null;
  /** Ohm inside the electrode's own concrete or backfill, less what the soil would have there. */
  readonly insideOhm: (figures: Figures) => number;
  /** Depth from which and down to which it lies in the soil. */
  readonly spanM: (figures: Figures) => readonly [topM: number, footM: number];
  /** How far it reaches across or down, whichever is more. */
  readonly extentM: (figures: Figures) => number;
}

/** Names of figures that must be above 0: all but depths and resistivities of 0. */
export function notPositive(figures: Figures, mayBeZero: readonly string[]): readonly string[] {
  return Object.keys(figures).filter(
    (name) => !(figures[name]! > 0) && !(figures[name] === 0 && mayBeZero.includes(name)),
  );
}

/** What a form without concrete or backfill has inside. */
export const nothingInside = (): number => 0;

/** Radial resistance of a shell of concrete or backfill between two diameters. */
export function shellOhm(resistivityOhmM: number, lengthM: number, innerM: number, outerM: number): number {
  return (resistivityOhmM * Math.log(outerM / innerM)) / (2 * Math.PI * lengthM);
}

/** Source of most of the forms. */
export const dwight: FormulaSource = {
  document: 'H. B. Dwight, Calculation of resistances to ground, Trans. AIEE 55, 1319-1328',
  edition: '1936',
  clause: null,
  provenance: 'memory',
};
