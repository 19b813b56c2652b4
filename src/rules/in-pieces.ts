import type { Metalwork } from '../site/site.ts';

/**
 * Metal of which a piece may hang free of the bond that lands on another: fences with gates, cladding, gutters. Not pipes: what
 * parts these is an insert, and the clause asks for the metal that comes into the building.
 */
export function isInPieces({ kind, continuous }: Metalwork): boolean {
  return continuous === 'no' && !/\bpip(?:e|es|ing)\b/i.test(kind);
}
