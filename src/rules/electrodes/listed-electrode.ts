import type { Answer, Electrode } from '../../site/site.ts';

/** Kinds that NFPA 70 250.52(A)(1) to (7) names (from memory); a drilled rod and a casing are rods and pipes of their own. */
const kinds: readonly string[] = [
  'rod',
  'rods',
  'pipe',
  'plate',
  'concrete-encased',
  'water pipe',
  'well casing',
  'drilled rod',
  'structural steel',
];

/**
 * Whether it is an electrode of the list of NFPA 70 250.52(A). A bare wire in a trench is one only where it closes to a ring;
 * radials and a strap on rock are none, unless a maker had them listed.
 */
export function isListedElectrode({ kind, closed, listed }: Pick<Electrode, 'kind' | 'closed' | 'listed'>): Answer {
  if (kinds.includes(kind) || listed === 'yes') return 'yes';
  if (kind === 'buried wire') return closed;
  return kind === 'unknown' || kind === 'other' ? 'unknown' : 'no';
}
