import { dimensionOfKey, formatQuantity } from '../units/format.ts';
import type { Interval } from '../units/interval.ts';
import { isTerm, type Terms, term } from './terms.ts';

/** A value put into a sentence: text as it stands, a list joined with commas, or a figure in SI named by its unit suffix. */
export type Value = string | number | Interval | readonly string[] | null;
export type Values = Readonly<Record<string, Value>>;

/** Whose words and whose units come first. */
export interface Speech {
  readonly terms: Terms;
  readonly unitsFirst: 'us' | 'si';
}

/**
 * Fills a message: `[electrode]` becomes the region's term (`[Electrode]` with a capital; `a` or `an`
 * before it as the term asks), `{lengthM}` the figure in
 * both unit systems by the suffix of its name, `{at}` text as it stands. Unknown figures read 'unknown'. Brackets and
 * braces round anything but one name stand as they are, so that a sentence can show a line of a site file
 * (`{bond: tower@2 ft}`, `[mains]`). Nothing is looked up twice: text that was filled in is never read as a message again.
 */
export function say(template: string, values: Values, speech: Speech): string {
  return template.replace(
    placeholder,
    (whole, article: string | undefined, idea: string | undefined, name?: string) => {
      if (idea !== undefined) return withArticle(article, sayTerm(idea, speech.terms)) ?? whole;
      return sayValue(name ?? '', values[name ?? ''] ?? null, speech);
    },
  );
}

const placeholder = /(?:\b(an?) )?\[([^\][{}]+)\]|\{(\w+)\}/g;

/** `a` or `an` by how the term begins: each region has words of its own. */
function withArticle(article: string | undefined, word: string | null): string | null {
  if (article === undefined || word === null) return word;
  return `${/^(?:[aeiou]|[AEFHILMNORSX](?=[A-Z]))/.test(word) ? 'an' : 'a'} ${word}`;
}

function sayTerm(idea: string, terms: Terms): string | null {
  const name = idea.toLowerCase();
  if (!isTerm(name)) return null;
  const word = term(name, terms);
  return idea === name ? word : word.charAt(0).toUpperCase() + word.slice(1);
}

function sayValue(name: string, value: Value, speech: Speech): string {
  if (value === null) return 'unknown';
  if (typeof value === 'string') return value;
  if (Array.isArray(value)) return value.join(', ');
  const dimension = dimensionOfKey(name);
  const figure = value as number | Interval;
  if (dimension === null) return typeof figure === 'number' ? String(figure) : `${figure.low} to ${figure.high}`;
  return formatQuantity(figure, dimension, speech.unitsFirst === 'us' ? 'both-us-first' : 'both-si-first') ?? 'unknown';
}
