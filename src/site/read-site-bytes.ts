import { readSite, type SiteRead } from './read-site.ts';
import { siteFileLimit } from './reading/limits.ts';
import { newReport, refuse } from './reading/report.ts';
import { sourceText } from './reading/source-text.ts';

export { siteFileLimit } from './reading/limits.ts';

/**
 * Reads the bytes of a site file: UTF-8, with or without a byte order mark, lines ended in any usual way. Never throws.
 * Other encodings, NUL and other control characters are refused with the place of the first.
 */
export function readSiteBytes(bytes: Uint8Array, fileName: string): SiteRead {
  if (bytes.length > siteFileLimit) return refused('', 0, 'file-too-large', { limitMiB: 4, bytes: bytes.length });
  if (isUtf16(bytes)) return refused('', 0, 'file-utf-16');
  const text = decode(bytes);
  const wrong = text.indexOf('\uFFFD');
  if (wrong >= 0 && !isUtf8(bytes)) return refused(text, wrong, 'file-not-utf-8');
  const control = controlCharacter.exec(text);
  if (control !== null) return refused(text, control.index, 'control-character', { code: codeOf(control[0]) });
  return readSite(text, fileName);
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for.
const controlCharacter = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F\u0080-\u0084\u0086-\u009F]/;

function codeOf(character: string): string {
  return `U+${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
}

function refused(
  text: string,
  offset: number,
  key: string,
  values: Readonly<Record<string, string | number>> = {},
): SiteRead {
  const report = newReport(sourceText(text));
  refuse({ path: '', report }, { start: offset, end: offset }, key, values);
  return { site: null, problems: report.problems };
}

/** A byte order mark of UTF-16, or NUL at every other place, as in UTF-16 without one. */
function isUtf16(bytes: Uint8Array): boolean {
  const [first, second, third, fourth] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) return true;
  return bytes.length >= 4 && ((first === 0 && third === 0) || (second === 0 && fourth === 0));
}

/** The text without its byte order mark; bytes that are no UTF-8 become U+FFFD. */
function decode(bytes: Uint8Array): string {
  return new TextDecoder('utf-8').decode(bytes);
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}
