import type { Facts } from '../../facts/facts.ts';
import type { Metalwork } from '../../site/site.ts';
import { addBond } from '../changes/add-bond.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Not the owner's to bond, no metal of the building, or live by purpose. */
const leftOut: readonly string[] = ['overhead power line', 'property line', 'service mast', 'electric fence'];
/** Metal that carries people's water and gas through the house: a difference of potential there is a hazard. */
const services: readonly string[] = ['gas pipe', 'water pipe'];

export const metalworkBonded = rule({
  id: 'metalwork-bonded',
  family: 'code',
  severity: 'defect',
  codeSets: ['any'],
  source: {
    document: 'NFPA 70; IEC 60364-4-41',
    edition: null,
    clause: '250.104; 411.3.1.2',
    provenance: 'second-hand',
  },
  needs: ['header', 'sections', 'bonding', 'site'],
  check(facts) {
    const { site } = facts;
    const metal = site.metalwork.filter((m) => !leftOut.includes(m.kind) && m.present !== 'no');
    if (metal.length === 0) return nothingThere(facts, 'metalwork');
    return metal.map((m) => ofMetal(m, facts));
  },
});

function ofMetal(m: Metalwork, { bonding, site, header }: Pick<Facts, 'bonding' | 'site' | 'header'>): Verdict {
  const at = [m.id];
  const reaches = bonding.service.is === 'known' ? bonding.serviceBy.bonds : bonding.earthBy.bonds;
  if (reaches.has(m.id)) return { is: 'met', at, because: { key: 'bonded' } };
  if (m.bonded === 'no') {
    const severity = services.includes(m.kind) ? 'hazard' : 'defect';
    return {
      is: 'not met',
      at,
      because: { key: 'not bonded' },
      severity,
      ...addBond(site, header.region, m.id, bonding.service.part),
    };
  }
  return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' } };
}
