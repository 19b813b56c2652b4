/** What a pipe round a conductor is made of, read off its name; 'none': nothing is round it. */
export type EnclosureMetal = 'ferrous' | 'not ferrous' | 'unknown' | 'none';

export function enclosureMetal(enclosure: string | null): EnclosureMetal {
  const text = (enclosure ?? 'none').toLowerCase();
  if (/^(?:none|no|nothing)$/.test(text)) return 'none';
  if (/stainless/.test(text)) return 'not ferrous';
  if (/steel|iron|galvani[sz]ed|\bemt\b|\bimc\b|\brmc\b|\brigid metal/.test(text)) return 'ferrous';
  if (/plastic|pvc|poly|hdpe|\bpe\b|wood|non-?metal|copper|alumin|brass/.test(text)) return 'not ferrous';
  return 'unknown';
}

/** Something is round it: a pipe, conduit, armour. */
export function isEnclosed(enclosure: string | null): boolean {
  return enclosure !== null && enclosureMetal(enclosure) !== 'none';
}
