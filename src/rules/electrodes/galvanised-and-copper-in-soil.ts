import type { Facts } from '../../facts/facts.ts';
import type { Guy, Support } from '../../site/site.ts';
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
    const { supports } = facts.site;
    const guys = supports.flatMap((s) => s.guys).filter((g) => g.metal !== 'none');
    const bases = supports.filter((s) => s.present !== 'no' && s.metal !== 'none' && standsInSoil(s));
    if (guys.length === 0 && bases.length === 0) return nothingThere(facts, 'supports');
    return [...guys, ...bases].map((p) => ofSteel(p, facts));
  },
});

/** The owner's words on what it stands in: set straight in the soil, not in a block. */
function standsInSoil({ base = null }: Support): boolean {
  return base !== null && /\b(?:soil|earth|buried|direct)/i.test(base) && !/concrete|block|footing/i.test(base);
}

type Steel = Pick<Support, 'id'> & { readonly metal: Guy['metal'] };

/** The shaft or the foot in the soil is what is eaten, so only what a conductor joins to it counts. */
function ofSteel({ id, metal: typed }: Steel, { site, electrodes }: Pick<Facts, 'site' | 'electrodes'>): Verdict {
  const at = [id];
  const ends = site.conductors
    .filter((c) => c.present !== 'no')
    .map((c) => [c.from, c.to, ...c.passes.map((p) => p.at)].map((p) => p.part))
    .filter((points) => points.includes(id))
    .flat();
  const metals = electrodes.filter((e) => ends.includes(e.id)).map((e) => e.part.metal?.name ?? null);
  if (metals.length === 0) return { is: 'met', at, because: { key: 'no electrode' } };
  const metal = typed === 'none' ? null : typed;
  if (metal === null || metals.includes(null)) {
    return { is: 'cannot tell', at, because: { key: 'metal unknown' }, settle: { key: 'look' } };
  }
  const eaten = metal.name === 'galvanised steel' || metal.name === 'steel';
  const copper = metals.some((name) => name !== null && /copper/.test(name) && !/tinned/.test(name));
  return eaten && copper
    ? { is: 'not met', at, because: { key: 'eaten' } }
    : { is: 'met', at, because: { key: 'alike' } };
}
