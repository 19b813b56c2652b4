import type { Dimension } from '../units/dimension.ts';
import { formatQuantity } from '../units/format.ts';
import type { Interval } from '../units/interval.ts';
import type { Speech } from '../words/say.ts';

/** What was said already, for one way of speaking: a site has few sizes and many wires. */
const said = new WeakMap<Speech, Map<string, string>>();

/** A figure in both unit systems, the site's own first; 'unknown' where nothing is known. */
export function sayFigureOf(value: number | Interval, dimension: Dimension, speech: Speech): string {
  const key = typeof value === 'number' ? `${dimension} ${value}` : `${dimension} ${value.low} ${value.high}`;
  const texts = said.get(speech) ?? new Map<string, string>();
  said.set(speech, texts);
  const before = texts.get(key);
  if (before !== undefined) return before;
  const text =
    formatQuantity(value, dimension, speech.unitsFirst === 'us' ? 'both-us-first' : 'both-si-first') ?? 'unknown';
  texts.set(key, text);
  return text;
}
