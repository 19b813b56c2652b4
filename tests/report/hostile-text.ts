/** Text that acts where it is not kept as text: markup, template and script endings, characters that turn or end a line. */
export const hostile = `<script>alert(1)</script><img src=x onerror=alert(2)>"'\`{{x}}{{{y}}}]]></style></title>--><!--&lt;&#60;`;
/** Override, embedding, isolate and mark of direction, separators of lines and paragraphs, zero width, null, BOM. */
export const acting = '\u2028\u2029\ufeff\u202a\u2067\u200f\u200b\u0007\u202e';
export const hostileText = hostile + acting;
/** As a reader must see them. */
export const actingShown = '[U+2028][U+2029][U+FEFF][U+202A][U+2067][U+200F][U+200B][U+0007][U+202E]';

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** The value with every text in it replaced; keys stay. `path` is the chain of keys and places. */
export function mapTexts(value: Json, replace: (text: string, path: readonly string[]) => string): Json {
  const walk = (v: Json, path: readonly string[]): Json => {
    if (typeof v === 'string') return replace(v, path);
    if (Array.isArray(v)) return v.map((inner: Json, i) => walk(inner, [...path, String(i)]));
    if (typeof v !== 'object' || v === null) return v;
    return Object.fromEntries(Object.entries(v).map(([key, inner]) => [key, walk(inner as Json, [...path, key])]));
  };
  return walk(value, []);
}
