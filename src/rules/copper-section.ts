import type { ConductorFacts } from '../facts/facts.ts';
import type { Answer } from '../site/site.ts';
import { isAtLeast } from '../units/interval.ts';
import type { Measured } from './rule.ts';

type Sized = Pick<ConductorFacts, 'wire' | 'areaM2' | 'part'>;

/** A size as printed is met by a size as printed: 13.3 mm² is 6 AWG. */
const printedShare = 1 - 2e-3;

/** What would settle each doubt; the words of a rule that asks have a sentence for both. */
export const copperSettles = {
  'size unknown': 'measure it',
  'metal unknown': 'look at it',
  'metal not listed': 'ask',
} as const;

export type CopperDoubt = keyof typeof copperSettles;
export type CopperAnswer = 'enough' | 'thin' | CopperDoubt;

/**
 * A conductor against a section that a clause gives for copper alone. Too thin for copper is too thin in any metal; thick
 * enough in another metal, the clause has no figure for.
 */
export function copperAnswer({ wire, areaM2, part }: Sized, leastM2: number): CopperAnswer {
  if (areaM2 === null || part.present === 'unknown') return 'size unknown';
  const enough = isAtLeast(areaM2, leastM2 * printedShare);
  if (enough === 'no') return 'thin';
  const metal = wire?.metal?.name ?? null;
  if (metal === null) return 'metal unknown';
  if (!/copper/.test(metal) || /clad/.test(metal)) return 'metal not listed';
  return enough === 'yes' ? 'enough' : 'size unknown';
}

/** Whether it is thick enough; a metal that the clause has no figure for may be. */
export function isThickCopper(c: Sized, leastM2: number): Answer {
  return asAnswer(copperAnswer(c, leastM2));
}

export function asAnswer(is: CopperAnswer): Answer {
  if (is === 'enough') return 'yes';
  return is === 'thin' ? 'no' : 'unknown';
}

/** The best answer of several conductors on one part, with the section of the thickest where all are known. */
export function bestCopper(
  conductors: readonly Sized[],
  leastM2: number,
): { readonly is: CopperAnswer; readonly measured?: Measured } {
  const answers = conductors.map((c) => copperAnswer(c, leastM2));
  const order = ['enough', 'size unknown', 'metal unknown', 'metal not listed', 'thin'] as const;
  const is = order.find((o) => answers.includes(o)) ?? 'size unknown';
  const areas = conductors.flatMap(({ areaM2 }, i) => (answers[i] === is && areaM2 !== null ? [areaM2] : []));
  if (areas.length === 0 || (is !== 'enough' && is !== 'thin')) return { is };
  const value = areas.reduce((most, a) => (a.high > most.high ? a : most));
  return { is, measured: { key: 'areaM2', value, limit: leastM2, sense: 'least' } };
}
