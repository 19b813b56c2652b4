import type { Facts } from '../../facts/facts.ts';
import type { Guy } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const galvanisedAndCopperInSoil = rule({
  id: 'galvanised-and-copper-in-soil',
  family: 'code',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'TIA-222', edition: 'F, G', clause: 'protective grounding', provenance: 'second-hand' },
  needs: ['sections', 'site', 'electrodes'],
  check(facts) {
    const guys = facts.site.supports.flatMap((s) => s.guys).filter((g) => g.metal !== 'none');
    if (guys.length === 0) return nothingThere(facts, 'supports');
    return guys.map((g) => ofGuy(g, facts));
  },
});

/** The anchor shaft in the soil is what is eaten, so only what a conductor joins to the guy counts. */
function ofGuy(g: Guy, { site, electrodes }: Pick<Facts, 'site' | 'electrodes'>): Verdict {
  const at = [g.id];
  const ends = site.conductors
    .filter((c) => c.present !== 'no' && (c.from.part === g.id || c.to.part === g.id))
    .map((c) => (c.from.part === g.id ? c.to.part : c.from.part));
  const metals = electrodes.filter((e) => ends.includes(e.id)).map((e) => e.part.metal?.name ?? null);
  if (metals.length === 0) return { is: 'met', at, because: { key: 'no electrode' } };
  const metal = g.metal === 'none' ? null : g.metal;
  if (metal === null || metals.includes(null)) {
    return { is: 'cannot tell', at, because: { key: 'metal unknown' }, settle: { key: 'look' } };
  }
  const eaten = metal.name === 'galvanised steel' || metal.name === 'steel';
  const copper = metals.some((name) => name !== null && /copper/.test(name) && !/tinned/.test(name));
  return eaten && copper
    ? { is: 'not met', at, because: { key: 'eaten' } }
    : { is: 'met', at, because: { key: 'alike' } };
}
