/** What a field is set to: text and figures, lists, groups. An unknown is the text `unknown`. */
export type ChangeValue = string | number | readonly ChangeValue[] | { readonly [key: string]: ChangeValue };

/** How names and texts are written: as in JSON where the file is JSON, else without quotes where none are needed. */
export type WritingStyle = 'yaml' | 'json';

/** A value on one line. */
export function writeValue(value: ChangeValue, style: WritingStyle): string {
  if (typeof value === 'number')
    return style === 'json' && !Number.isFinite(value) ? inQuotes(String(value)) : String(value);
  if (typeof value === 'string') return writeText(value, style);
  if (isList(value)) return `[${value.map((item) => writeValue(item, style)).join(', ')}]`;
  return writeGroup(value, style);
}

export function writeGroup(fields: Readonly<Record<string, ChangeValue>>, style: WritingStyle): string {
  const pairs = Object.entries(fields).map(([key, value]) => `${writeText(key, style)}: ${writeValue(value, style)}`);
  return `{${pairs.join(', ')}}`;
}

/** Letters and digits of any script, and marks that mean nothing to YAML; a minus only before more. */
const plain = /^[\p{L}\p{M}\p{N}_./+][\p{L}\p{M}\p{N}_./+@%()°²³Ω ·-]*$/u;

/** A text or name: plain, in quotes where something in it would be read as something else. */
export function writeText(text: string, style: WritingStyle): string {
  const isPlain =
    plain.test(text) && !text.endsWith(' ') && text.toLowerCase() !== 'null' && !/^(?:---|\.\.\.)/.test(text);
  if (style === 'yaml' && isPlain) return text;
  return inQuotes(text);
}

/** Quotes as in JSON, which YAML reads too; marks that break a line or cannot be seen are written as their codes. */
function inQuotes(text: string): string {
  const json = JSON.stringify(text);
  return json.replace(
    /[\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/g,
    (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

function isList(value: ChangeValue): value is readonly ChangeValue[] {
  return Array.isArray(value);
}
