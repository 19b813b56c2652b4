/**
 * Text of unknown origin made harmless for a page, a drawing or a terminal: what would turn the reading direction, end a
 * line of a script, or steer a terminal is shown by its code (`[U+202E]`) instead of acting; line ends and tabs become
 * spaces; half of a surrogate pair becomes U+FFFD. Everything else stays as typed. Doing it twice changes nothing.
 */
export function plainText(text: string): string {
  return text
    .replace(/\r\n|[\n\r\t]/g, ' ')
    .replace(actingCharacters, (c) => `[U+${c.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}]`)
    .replace(loneSurrogates, '\uFFFD');
}

/** Controls, soft hyphen, zero-width space, marks, embeddings and isolates of direction, line and paragraph separators, BOM. */
const actingCharacters =
  /\p{Cc}|[\u00ad\u061c\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufdd0-\ufdef\ufeff\ufff9-\ufffb\ufffe\uffff]/gu;

const loneSurrogates = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;
