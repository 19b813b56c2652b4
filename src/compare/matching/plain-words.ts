/**
 * Words of one of the owner's texts and what stands between them, in turns; how it is laid out (brackets, lists, quotes,
 * blanks) left out, so that a list says the same on one line and on several.
 */
export function plainWords(text: string): readonly string[] {
  const flat = text.replace(/(?<![^\s])-(?=\s)/g, ' ');
  return flat.split(/([\p{L}\p{N}\p{M}_-]+)/u).map((piece) => piece.replace(/[\s[\]{},"']+/g, ''));
}
