import type { Site } from '../site/site.ts';
import { speechOf } from '../study/speech-of.ts';
import type { Study } from '../study/study.ts';
import type { Bounded } from '../study/study-earth.ts';
import type { Dimension } from '../units/dimension.ts';
import { formatQuantity } from '../units/format.ts';
import type { Interval } from '../units/interval.ts';
import { say } from '../words/say.ts';
import type { TerminalPage } from './page-blocks.ts';
import { plain, type Terminal } from './terminal.ts';

export { bullet, headed, paragraph } from './page-blocks.ts';

/** What every block of the page of soil and electrodes is written from. */
export interface SoilPage extends TerminalPage {
  readonly study: Study;
  readonly site: Site;
}

export function soilPage(study: Study, site: Site, terminal: Terminal): SoilPage {
  const speech = speechOf(site);
  return { study, site, terminal, sentence: (template, values = {}) => plain(say(template, values, speech)) };
}

/** A figure or range in both unit systems, the owner's first, to so many digits; an end that is null is open. */
export function figureOf(
  page: SoilPage,
  value: number | { readonly low: number; readonly high: number | null },
  dimension: Dimension,
  digits = 3,
): string {
  const range: number | Interval =
    typeof value === 'number' ? value : { low: value.low, high: value.high ?? Number.POSITIVE_INFINITY };
  const system = speechOf(page.site).unitsFirst === 'us' ? 'both-us-first' : 'both-si-first';
  return formatQuantity(range, dimension, system, { digits }) ?? 'unknown';
}

/** Ends that differ by less read as one figure. */
const sameWithin = 1.02;

/** A lower bound below this, with none above it, says nothing (ohm). */
const leastTold = 0.1;

/** A resistance as a range of two or three digits, `24 to 95 ohm`; one figure reads `about 37 ohm`; null where nothing is known. */
export function ohmOf(ohm: Bounded | null): string | null {
  if (ohm === null) return null;
  const { low } = ohm;
  const high = ohm.high ?? Number.POSITIVE_INFINITY;
  if (high === Number.POSITIVE_INFINITY && low < leastTold) return null;
  // a lead and a clamp, where nothing is known of the soil itself
  if (low < leastTold && high > 100 * low) return formatQuantity({ low: 0, high }, 'resistance', 'si');
  if (high > low * sameWithin) return formatQuantity({ low, high }, 'resistance', 'si');
  return `about ${formatQuantity(low, 'resistance', 'si', { digits: 2 })}`;
}
