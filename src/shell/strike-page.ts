import type { Site } from '../site/site.ts';
import { speechOf } from '../study/speech-of.ts';
import type { Bounded } from '../study/study-earth.ts';
import type { StudyStrike } from '../study/study-strike.ts';
import type { Dimension } from '../units/dimension.ts';
import { formatQuantity } from '../units/format.ts';
import { say } from '../words/say.ts';
import type { TerminalPage } from './page-blocks.ts';
import { plain, type Terminal } from './terminal.ts';

/** What every block of the page of a strike is written from. */
export interface StrikePage extends TerminalPage {
  readonly strike: StudyStrike;
  readonly site: Site;
}

export function strikePage(strike: StudyStrike, site: Site, terminal: Terminal): StrikePage {
  const speech = speechOf(site);
  return { strike, site, terminal, sentence: (template, values = {}) => plain(say(template, values, speech)) };
}

/** A figure in both unit systems, the owner's first. */
export function figureIn({ site }: StrikePage, value: number, dimension: Dimension, digits = 2): string {
  const system = speechOf(site).unitsFirst === 'us' ? 'both-us-first' : 'both-si-first';
  return formatQuantity(value, dimension, system, { digits }) ?? 'unknown';
}

/** The unit stands in the heading: `68`, `5.1`, `0.85`. Below a hundredth nobody asks how little. */
export function kilo(value: number, digits = 2): string {
  const size = Math.abs(value);
  if (size > 0 && size < leastKilo) return `under ${leastKilo / 1000}`;
  return formatQuantity(size / 1000, 'number', 'si', { digits }) ?? '';
}
/** Ten volts, ten amperes. */
const leastKilo = 10;

/** `51 to 90`; '' where both ends are one figure. */
export function kiloRange({ low, high }: Bounded): string {
  if (high === null) return `over ${kilo(low)}`;
  if (high < leastKilo || high <= low * sameWithin) return '';
  return formatQuantity({ low: low / 1000, high: high / 1000 }, 'number', 'si') ?? '';
}
/** Ends that differ by less read as one figure. */
const sameWithin = 1.02;

/** Significant digits of a figure that its range leaves a meaning: down to about a twentieth of its width, two or three. */
export function digitsOf(value: number, { low, high }: Bounded): number {
  if (high === null) return 2;
  if (high <= low || value <= 0) return 3;
  const step = Math.floor(Math.log10((high - low) / 20));
  return Math.min(3, Math.max(2, Math.floor(Math.log10(value)) - step + 1));
}

/** `12 %`, `0.4 %`; below a thousandth nobody asks how little. */
export function percentOf(share: number): string {
  if (share > 0 && share < 0.001) return 'under 0.1 %';
  return `${Number((share * 100).toPrecision(share < 0.1 ? 1 : 2))} %`;
}

/** Largest figure first, then by id. */
export function byLargest<T>(size: (one: T) => number, id: (one: T) => string): (a: T, b: T) => number {
  return (a, b) => size(b) - size(a) || (id(a) < id(b) ? -1 : 1);
}
