import { dimensionOfKey, formatQuantity } from '../units/format.ts';
import type { Interval } from '../units/interval.ts';
import { onceForText } from '../units/once-for-text.ts';
import { type Dimension, readQuantity } from '../units/quantity.ts';
import { gaugeAreaM2, gaugeNumber } from '../units/wire-gauge.ts';
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
 * both unit systems by the suffix of its name, `{=6 AWG}` or `{=0.2 m}` a figure of the sentence itself, a wire gauge, a
 * length or a section, in both systems with the owner's first, `{at}` text as it stands, `{at?is:are}` one word
 * where `at` is one and the other where it is several. Unknown figures read 'unknown'. A
 * figure of the sentence that cannot be read is a slip of whoever wrote it (RangeError). Brackets and
 * braces round anything but one name stand as they are, so that a sentence can show a line of a site file
 * (`{bond: tower@2 ft}`, `[mains]`). Nothing is looked up twice: text that was filled in is never read as a message again.
 */
export function say(template: string, values: Values, speech: Speech): string {
  let text = '';
  for (const piece of piecesOf(template)) text += typeof piece === 'string' ? piece : piece(values, speech);
  return text;
}

/** Part of a message: text as it stands, or what is filled in. */
type Piece = string | ((values: Values, speech: Speech) => string);

/** A message taken apart: there are as many as somebody wrote. */
const piecesOf = onceForText((template): readonly Piece[] => {
  const pieces: Piece[] = [];
  let end = 0;
  for (const found of template.matchAll(placeholder)) {
    pieces.push(template.slice(end, found.index), pieceOf(found));
    end = found.index + found[0].length;
  }
  pieces.push(template.slice(end));
  return pieces;
});

function pieceOf([whole, article, idea, literal, counted, one, more, name]: RegExpExecArray): Piece {
  if (idea !== undefined) return (_, { terms }) => withArticle(article, sayTerm(idea, terms)) ?? whole;
  if (literal !== undefined) return (_, speech) => sayLiteral(literal, speech);
  if (counted !== undefined) return (values) => (isSeveral(values[counted] ?? null) ? more : one) ?? '';
  return (values, speech) => sayValue(name ?? '', values[name ?? ''] ?? null, speech);
}

const placeholder = /(?:\b([Aa]n?) )?\[([^\][{}]+)\]|\{=([^{}]+)\}|\{(\w+)\?([^{}:]*):([^{}:]*)\}|\{(\w+)\}/g;

function isSeveral(value: Value): boolean {
  if (typeof value === 'number') return value !== 1;
  return Array.isArray(value) && value.length > 1;
}

/** `a` or `an` by how the term begins: each region has words of its own. */
function withArticle(article: string | undefined, word: string | null): string | null {
  if (article === undefined || word === null) return word;
  const isVowel = /^(?:[aeiou]|[AEFHILMNORSX](?=[A-Z]))/.test(word);
  return `${article.charAt(0)}${isVowel ? 'n' : ''} ${word}`;
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
  return sayFigure(figure, dimension, speech);
}

function sayFigure(figure: number | Interval, dimension: Dimension, { unitsFirst }: Speech): string {
  return formatQuantity(figure, dimension, unitsFirst === 'us' ? 'both-us-first' : 'both-si-first') ?? 'unknown';
}

/** `6 AWG`, `8 in`, `16 mm2`: a figure that stands in the sentence itself. */
function sayLiteral(text: string, speech: Speech): string {
  const key = `${speech.unitsFirst} ${text}`;
  const said = literals.get(key) ?? readLiteral(text, speech);
  literals.set(key, said);
  return said;
}

/** Figures that sentences hold, as they were said before: there are as many as somebody wrote. */
const literals = new Map<string, string>();

function readLiteral(text: string, speech: Speech): string {
  const gauge = gaugeNumber(/^(\S+) AWG$/.exec(text)?.[1] ?? '');
  if (gauge !== null) return sayFigure(gaugeAreaM2(gauge), 'area', speech);
  for (const dimension of ['length', 'area'] as const) {
    const read = readQuantity(text, dimension);
    if (read.ok) return sayFigure(read.interval, dimension, speech);
  }
  throw new RangeError(`{=${text}}: neither a wire gauge, a length nor a section`);
}
