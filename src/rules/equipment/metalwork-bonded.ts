import type { Facts } from '../../facts/facts.ts';
import type { Metalwork } from '../../site/site.ts';
import { isAtMost } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { addBond } from '../changes/add-bond.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Not the owner's to bond, no metal of the building, or live by purpose; the bond of a pool need not reach any panel. */
const leftOut: readonly string[] = ['overhead power line', 'property line', 'service mast', 'electric fence', 'pool'];
/** Ours: a fence this near to a tower or mast is in reach of what it carries, metres. */
const fenceM = 3;
/** Metal that carries people's water and gas through the house: a difference of potential there is a hazard. */
const services: readonly string[] = ['gas pipe', 'water pipe'];

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'site'>;

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
    const between = apart(site);
    return metal.map((m) => (m.kind === 'fence' ? ofFence(m, facts, between) : ofMetal(m, facts)));
  },
});

/** A fence is asked beside a tower or mast, as advice: a person at it touches what a strike lifts. */
function ofFence(m: Metalwork, facts: Asked, between: ReturnType<typeof apart>): Verdict {
  const v = ofMetal(m, facts);
  if (v.is === 'met') return v;
  const supports = facts.site.supports.filter((s) => s.present !== 'no');
  const near = supports.map((s) => between(m.id, s.id)).map((d) => (d === null ? 'unknown' : isAtMost(d, fenceM)));
  const at = [m.id];
  if (near.every((n) => n === 'no') && isWhole(facts, 'supports'))
    return { is: 'met', at, because: { key: 'far fence' } };
  if (v.is === 'not met' && near.includes('yes')) return { ...v, severity: 'advice' };
  return v.is === 'not met' ? { is: 'cannot tell', at, because: { key: 'how near' }, settle: { key: 'tape' } } : v;
}

function ofMetal(m: Metalwork, { bonding, site, header }: Asked): Verdict {
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
