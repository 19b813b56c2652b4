import type { ConductorFacts } from '../../facts/facts.ts';
import type { Wire } from '../../materials/wire.ts';
import type { Answer } from '../../site/site.ts';
import { isAtLeast } from '../../units/interval.ts';
import { type SizeUnits, thickerWire } from '../changes/thicker-wire.ts';
import type { Limit, Verdict } from '../rule.ts';

/** Least section by metal, square metres; a metal that is null has no figure in the clause. */
export interface LeastSections {
  readonly copper: number;
  readonly aluminium: number | null;
  readonly steel: number | null;
  /** Copper-clad steel and bronze. */
  readonly cladSteel: number | null;
  /** Aluminium as a strap, where the clause asks more of it than of a round wire. */
  readonly aluminiumStrap?: number;
}

/** What has a section: a conductor, or the wire of an electrode. */
export type Sized = Pick<ConductorFacts, 'id' | 'wire' | 'areaM2'>;

/** A size as printed is met by a size as printed: 21.2 mm² is 4 AWG, of 21.15. */
const printedShare = 1 - 3e-3;

/** The limits of a record, one for each metal that the clause has a figure for. */
export function limitsOf({ copper, aluminium, steel, cladSteel }: LeastSections): readonly Limit[] {
  const all = { copper, aluminium, steel, 'copper-clad steel': cladSteel };
  return Object.entries(all).flatMap(([of, value]) =>
    value === null ? [] : [{ key: 'areaM2', value, sense: 'least', of } as const],
  );
}

/** The conductor's section against the least of its metal. `sold`: how the wire that would put it right is sold. */
export function sectionVerdict(c: Sized, least: LeastSections, sold?: SizeUnits): Verdict {
  const at = [c.id];
  if (c.areaM2 === null)
    return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' } };
  const limit = limitOf(c.wire, least);
  if (limit === 'metal unknown') return ofUnknownMetal(c, least, sold);
  if (limit === null) return ofUnlistedMetal(c, least, sold);
  const measured = { key: 'areaM2', value: c.areaM2, limit, sense: 'least' } as const;
  const enough = isAtLeast(c.areaM2, limit * printedShare);
  if (enough === 'yes') return { is: 'met', at, because: { key: 'enough' }, measured };
  if (enough === 'no') return { is: 'not met', at, because: { key: 'small' }, measured, ...rightOf(c, least, sold) };
  return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' }, measured };
}

/** Without a figure of its own; it conducts worse than copper, so that what is too small for copper is too small. */
function ofUnlistedMetal(c: Sized, least: LeastSections, sold?: SizeUnits): Verdict {
  const at = [c.id];
  if (c.areaM2 === null || isAtLeast(c.areaM2, least.copper * printedShare) !== 'no')
    return { is: 'cannot tell', at, because: { key: 'metal not listed' }, settle: { key: 'ask' } };
  const measured = { key: 'areaM2', value: c.areaM2, limit: least.copper, sense: 'least' } as const;
  return { is: 'not met', at, because: { key: 'small' }, measured, ...rightOf(c, least, sold) };
}

/** Too small for copper is too small for any metal that needs more. */
function ofUnknownMetal(c: Sized, least: LeastSections, sold?: SizeUnits): Verdict {
  const at = [c.id];
  const smallest = smallestOf(least);
  if (c.areaM2 !== null && isAtLeast(c.areaM2, smallest * printedShare) === 'no') {
    const measured = { key: 'areaM2', value: c.areaM2, limit: smallest, sense: 'least' } as const;
    return { is: 'not met', at, because: { key: 'small' }, measured, ...rightOf(c, least, sold) };
  }
  return { is: 'cannot tell', at, because: { key: 'metal unknown' }, settle: { key: 'look at it' } };
}

/** The same as an answer: unknown too for a metal that nobody named or the clause has no figure for. */
export function reachesSection({ wire, areaM2 }: Pick<Sized, 'wire' | 'areaM2'>, least: LeastSections): Answer {
  const limit = limitOf(wire, least);
  if (areaM2 === null || limit === null) return 'unknown';
  if (limit !== 'metal unknown') return isAtLeast(areaM2, limit * printedShare);
  return isAtLeast(areaM2, smallestOf(least) * printedShare) === 'no' ? 'no' : 'unknown';
}

function smallestOf({ copper, aluminium, steel, cladSteel }: LeastSections): number {
  return Math.min(...[copper, aluminium, steel, cladSteel].filter((m) => m !== null));
}

function rightOf({ id }: Sized, { copper }: LeastSections, sold: SizeUnits | undefined) {
  return sold === undefined ? {} : thickerWire(id, copper, sold);
}

function limitOf(wire: Wire | null, least: LeastSections): number | null | 'metal unknown' {
  const metal = wire?.metal?.name ?? null;
  if (metal === null) return 'metal unknown';
  if (metal === 'copper-clad steel' || metal === 'bronze') return least.cladSteel;
  if (/copper/.test(metal) && metal !== 'copper-clad aluminium') return least.copper;
  if (/aluminium/.test(metal))
    return wire?.form === 'strap' ? (least.aluminiumStrap ?? least.aluminium) : least.aluminium;
  return /steel/.test(metal) ? least.steel : null;
}
