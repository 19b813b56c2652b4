/**
 * Numbers as people write them: `8`, `.5`, `1.5e-3`, `5/8`, `1 1/2`, `57 400`. Source text of a regular expression without
 * groups, so that it can be built into longer ones.
 */
export const numberPattern =
  '[+-]?(?:\\d+ \\d+/\\d+|\\d+/\\d+|\\d{1,3}(?: \\d{3})+(?![\\d/.])|(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)';

/** The figure that a text matching `numberPattern` stands for; null for a fraction over zero. */
export function readNumber(text: string): number | null {
  const negative = text.startsWith('-');
  const plain = text.replace(/^[+-]/, '');
  const [, whole, over, under] = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(plain) ?? [];
  const value =
    over === undefined ? Number(plain.replaceAll(' ', '')) : Number(whole ?? 0) + Number(over) / Number(under);
  if (!Number.isFinite(value)) return null;
  return negative ? -value : value;
}

export type Tidied =
  | { readonly ok: true; readonly text: string }
  /** A comma stands where the decimal point belongs. */
  | { readonly ok: false; readonly corrected: string };

/**
 * Brings the characters around numbers into one form: typographic quotes, primes, minus signs, non-breaking spaces and
 * vulgar fractions; the hyphen of `1-1/2` and of `8'-6"`; the commas of `1,500`. A comma that cannot part thousands is
 * taken for a decimal comma, which is refused with the text as it should be: nobody knows whether `2,5` was meant as a list.
 */
export function tidyNumbers(text: string): Tidied {
  const plain = plainCharacters(text);
  const grouped = plain.replace(/(?<![\d.,])[1-9]\d{0,2}(?:,\d{3})+(?![\d,])/g, (figure) => figure.replaceAll(',', ''));
  if (!/\d,\d/.test(grouped)) return { ok: true, text: grouped };
  const corrected = text.replace(/\d[\d.,]*,\d+/g, (figure) => {
    const at = figure.lastIndexOf(',');
    return `${figure.slice(0, at).replace(/[.,]/g, '')}.${figure.slice(at + 1)}`;
  });
  return { ok: false, corrected };
}

function plainCharacters(text: string): string {
  return text
    .replace(/(\d)\s*([¼-¾⅐-⅞])/g, '$1 $2')
    .replace(/[¼-¾⅐-⅞]/g, (fraction) => fraction.normalize('NFKC').replace('\u2044', '/'))
    .replace(/[\u2018\u2019\u2032]/g, "'")
    .replace(/[\u201c\u201d\u2033]/g, '"')
    .replace(/[\u2212\u2010\u2011]/g, '-')
    .replace(/\s+/g, ' ')
    .replace(/(\d)-(\d+\/\d)/g, '$1 $2')
    .replace(/(?<=\d ?(?:'|ft|feet|foot)) ?- ?(?=\d[\d /.]*(?:"|''|in(?![a-z])|inch))/gi, ' ')
    .trim();
}
