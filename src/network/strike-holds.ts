import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Peak } from '../surge/peak-of.ts';
import { strikeCoupling } from './strike-coupling.ts';
import { type StrikeGap, strikeGaps } from './strike-gaps.ts';
import { type StrikeLead, strikeLeads } from './strike-leads.ts';
import type { StrikeRun } from './strike-of.ts';
import type { StrikePair } from './strike-pairs.ts';

/** What rules ask of a strike beside what is printed: each is worked out when it is asked for. */
export interface StrikeHolds {
  readonly leads: readonly StrikeLead[];
  readonly gaps: readonly StrikeGap[];
  /** Volts that other currents induce around the loop of a straight line between two parts and the metal between them. */
  readonly coupling: (pair: Pick<StrikePair, 'a' | 'b' | 'by'>) => Peak | null;
}

export function strikeHolds(
  bonded: BondingRun,
  run: StrikeRun,
): { readonly [N in keyof StrikeHolds]: () => StrikeHolds[N] } {
  return {
    leads: () => strikeLeads(bonded.site, run),
    gaps: () => strikeGaps(bonded, run),
    coupling: () => (pair) => strikeCoupling(pair, run),
  };
}

/** Where nothing could be worked out. */
export const noHolds: StrikeHolds = { leads: [], gaps: [], coupling: () => null };
