/** Why something was not done or not taken: a key and its figures; sentences are made elsewhere. */
export type FitReason =
  /** Zero, negative or no number; `reading` counts from 0. */
  | { readonly key: 'reading not above zero'; readonly reading: number }
  /** Two pins in one place, a spacing that is not above zero, or pins driven deeper than they stand apart. */
  | { readonly key: 'pins not usable'; readonly reading: number }
  /** Better than sea water or worse than dry rock: a unit, or a decimal point, may have slipped. */
  | { readonly key: 'no resistivity of soil'; readonly reading: number; readonly apparentOhmM: number }
  | { readonly key: 'over range'; readonly readings: number }
  | { readonly key: 'too few readings'; readonly readings: number; readonly needed: number }
  | { readonly key: 'one spacing'; readonly readings: number }
  | { readonly key: 'too few spacings'; readonly spacings: number; readonly needed: number }
  /** The same pins, figures further apart than noise explains; positions in the list of readings. */
  | { readonly key: 'readings contradict'; readonly readings: readonly number[]; readonly timesApart: number }
  | { readonly key: 'misfit'; readonly misfitShare: number; readonly limitShare: number }
  /** Not markedly better than this many layers. */
  | { readonly key: 'no better'; readonly layers: number }
  /** It fits, but this many layers fit markedly better. */
  | { readonly key: 'markedly worse'; readonly layers: number }
  /** This many layers fit. */
  | { readonly key: 'not needed'; readonly layers: number };

/** A figure with its 95 % range; null: no end within what the spacings can see. */
export interface FittedFigure {
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
  /** Whether the range has both ends, at most ten times apart. */
  readonly resolved: boolean;
}

export interface FittedLayer {
  readonly resistivityOhmM: FittedFigure;
  /** null: goes down without end. */
  readonly thicknessM: FittedFigure | null;
}

/**
 * Where a layer's thickness and resistivity cannot both be told, what can: their product (ohm square metre, of a layer that
 * resists) or thickness over resistivity (siemens, of one that conducts).
 */
export interface TradeOff {
  /** Counts from 0 at the surface. */
  readonly layer: number;
  readonly of: 'thickness times resistivity' | 'thickness over resistivity';
  readonly range: FittedFigure;
}

export interface FittedReading {
  /** null: over range. */
  readonly measuredOhmM: number | null;
  /** null: over range, or no soil was found. */
  readonly fittedOhmM: number | null;
}

export interface TriedLayers {
  readonly layers: 1 | 2 | 3;
  /** Root mean square of (fitted - measured) / measured; null: not tried. */
  readonly misfitShare: number | null;
  /** null: this one was taken. */
  readonly whyNot: FitReason | null;
}

/** What layers a set of four-pin readings carries. */
export interface SoundingFit {
  /** In the order given. */
  readonly readings: readonly FittedReading[];
  /** null: none, and `reason` says why. */
  readonly chosen: 1 | 2 | 3 | null;
  readonly reason: FitReason | null;
  readonly layers: readonly FittedLayer[];
  readonly misfitShare: number | null;
  /** Noise of a reading that the ranges rest on: as stated or taken, or what the misfit shows where that is more. */
  readonly noiseShare: number;
  readonly tried: readonly TriedLayers[];
  readonly tradeOffs: readonly TradeOff[];
}
