import type { Interval } from '../units/interval.ts';

/** What the owner pays, line by line as typed; the study keeps them for lists of works. */
export interface StudyPrices {
  /** As typed; null: no currency was named. */
  readonly currency: string | null;
  /** In the order of the file. */
  readonly lines: readonly StudyPrice[];
  /** Hours that the owner reckons with, such as `hours per rod: 1`. */
  readonly hours: readonly StudyHours[];
}

export interface StudyPrice {
  /** What is priced, without the unit: `rod`, `6 AWG copper`; the kind of the format where a word of a page was typed. */
  readonly name: string;
  /** In the currency, for `perCount` of `per`; null: the text is no figure. */
  readonly price: Interval | null;
  /** hour, day: somebody's work. */
  readonly per: 'each' | 'm' | 'ft' | 'hour' | 'day';
  /** `per 100 ft` has 100. */
  readonly perCount: number;
  /** The owner's own line, `name: value`. */
  readonly typed: string;
}

export interface StudyHours {
  /** What takes the hours: `rod`, `joint`, `trench`, `day` (hours of a day's work). */
  readonly name: string;
  readonly hours: Interval | null;
  readonly per: 'each' | 'm' | 'ft';
  readonly perCount: number;
  readonly typed: string;
}
