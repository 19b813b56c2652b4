import type { Site } from '../site/site.ts';
import type { Interval } from '../units/interval.ts';
import { once } from '../units/once.ts';
import { readQuantity } from '../units/quantity.ts';
import { kindWords } from '../words/kind-words.ts';
import { say } from '../words/say.ts';
import type { StudyHours, StudyPrice, StudyPrices } from './study-prices.ts';

/**
 * The prices of a site file as lines: `rod: 28`, `6 AWG copper per ft: 1.1`, `2 AWG copper: 95 per 100 ft`, `hour: 60`,
 * `hours per rod: 1`. A figure may be a range (`15 to 20`); one that cannot be read, or is negative, is null and kept, so
 * that a page can name it. null: the file has no prices.
 */
export function pricesOf(prices: Site['prices']): StudyPrices | null {
  if (prices === null) return null;
  const entries = Object.entries(prices).filter(([key]) => key !== 'currency');
  const currency = prices.currency === undefined ? null : String(prices.currency);
  return {
    currency: currency === 'unknown' ? null : currency,
    lines: entries.flatMap(([key, value]) => (hoursName(key) === null ? [priceLine(key, String(value))] : [])),
    hours: entries.flatMap(([key, value]) => hoursLine(key, String(value))),
  };
}

function priceLine(key: string, value: string): StudyPrice {
  const typed = `${key}: ${value}`;
  const time = timeOf(key);
  const [fromKey, fromValue] = [splitUnit(key), splitUnit(value)];
  const price = readPrice(fromValue.text);
  if (time !== null) return { name: key.trim(), price, per: time, perCount: 1, typed };
  const { per, perCount } = fromKey.per === 'each' ? fromValue : fromKey;
  return { name: kindNamed(fromKey.text), price, per, perCount, typed };
}

/** The kind of the file format that a page of either region calls so; what is no such word stands as typed. */
function kindNamed(text: string): string {
  return wordsOfPages().get(text.toLowerCase()) ?? text;
}

const wordsOfPages = once(
  () =>
    new Map(
      Object.entries(kindWords).flatMap(([kind, words]) =>
        (['us', 'iec'] as const).map((terms) => [say(words, {}, { terms, unitsFirst: 'si' }).toLowerCase(), kind]),
      ),
    ),
);

/** `hour`, `electrician per hour`, `day's work`. */
function timeOf(key: string): 'hour' | 'day' | null {
  if (
    /^(?:(?:an? |one )?hour(?:ly)?(?:['’]s)?(?: (?:rate|work|of work|of labou?r))?|.* (?:per|an) hour)$/i.test(
      key.trim(),
    )
  )
    return 'hour';
  return /^(?:(?:a |one )?(?:day|daily)(?:['’]s)?(?: (?:rate|work|of work|of labou?r))?|.* (?:per|a) day)$/i.test(
    key.trim(),
  )
    ? 'day'
    : null;
}

const units: Readonly<Record<string, 'm' | 'ft'>> = {
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
};

interface Split {
  readonly text: string;
  readonly per: 'each' | 'm' | 'ft';
  readonly perCount: number;
}

/** `6 AWG copper per ft`, `95 per 100 ft`, `4 each` into what stands before and the unit. */
function splitUnit(typed: string): Split {
  const text = typed.trim();
  const [, before, count, word] = /^(.*?),?\s*(?:\bper\b|\/)\s*(\d+)?\s*([a-z]+)\.?$/i.exec(text) ?? [];
  const per = units[(word ?? '').toLowerCase()];
  if (before !== undefined && per !== undefined) return { text: before.trim(), per, perCount: Number(count ?? 1) || 1 };
  return { text: text.replace(/,?\s+(?:each|apiece|per piece)$/i, ''), per: 'each', perCount: 1 };
}

function readPrice(text: string): Interval | null {
  const read = readQuantity(text, 'number');
  return read.ok && read.interval.low >= 0 ? read.interval : null;
}

function hoursName(key: string): Split | null {
  const name = /^hours? (?:per|for) (?:an? |one |each )?(.+)$/i.exec(key.trim())?.[1];
  if (name === undefined) return null;
  const [, count, word, what] = /^(\d+)?\s*([a-z]+)\.? (?:of )?(.+)$/i.exec(name) ?? [];
  const per = units[(word ?? '').toLowerCase()];
  return per === undefined
    ? { text: name, per: 'each', perCount: 1 }
    : { text: what!, per, perCount: Number(count ?? 1) || 1 };
}

function hoursLine(key: string, value: string): readonly StudyHours[] {
  const split = hoursName(key);
  if (split === null) return [];
  const { text, per, perCount } = split;
  return [{ name: text, hours: readPrice(value), per, perCount, typed: `${key}: ${value}` }];
}
