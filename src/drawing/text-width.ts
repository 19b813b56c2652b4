/**
 * Width of text in a sans-serif face, in the unit of the size: sum of advance widths of Helvetica (Adobe font metrics,
 * from memory; Arial and Liberation Sans have the same), a full square for wide scripts and for anything unknown. An
 * estimate for placing labels; a reader's own font may differ by a few per cent.
 */
export function textWidth(text: string, size: number): number {
  let thousandths = 0;
  for (const c of text) thousandths += advance(c);
  return (thousandths * size) / 1000;
}

/** The text, or as much of it as fits, with an ellipsis. */
export function fitText(text: string, size: number, width: number): string {
  if (textWidth(text, size) <= width) return text;
  const characters = [...text];
  while (characters.length > 1 && textWidth(`${characters.join('')}…`, size) > width) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}

const widths: readonly (readonly [characters: string, thousandths: number])[] = [
  ["'", 191],
  ['ijl', 222],
  ['|', 260],
  [' !,./:;I[]\\ft', 278],
  ['()-`r', 333],
  ['"', 355],
  ['*', 389],
  ['ckszvxyJ', 500],
  ['abdeghnopqu0123456789L_$#?', 556],
  ['+<=>~', 584],
  ['FTZ', 611],
  ['ABEKPSVXY&', 667],
  ['wCDHNRU', 722],
  ['GOQ', 778],
  ['mM', 833],
  ['%', 889],
  ['W', 944],
  ['@', 1015],
];

const advances = new Map(widths.flatMap(([characters, width]) => [...characters].map((c) => [c, width] as const)));

function advance(character: string): number {
  const known = advances.get(character);
  if (known !== undefined) return known;
  // Letters with marks, Greek and Cyrillic are about as wide as the widest common letters.
  return character.codePointAt(0)! < 0x530 ? 670 : 1000;
}
