import type { Facts } from '../../facts/facts.ts';
import type { Metalwork } from '../../site/site.ts';
import { isAtMost } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { armsReachM, withinArmsReach } from '../arms-reach.ts';
import { addBond } from '../changes/add-bond.ts';
import { isInPieces } from '../in-pieces.ts';
import { isPool } from '../is-pool.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Not the owner's to bond, no metal of the building, or live by purpose; the bond of a pool need not reach any panel. */
const leftOut: readonly string[] = ['overhead power line', 'property line', 'service mast', 'electric fence'];
/** Ours: a fence this near to a tower or mast is in reach of what it carries, metres. */
const fenceM = 3;
/** Metal that carries people's water and gas through the house: a difference of potential there is a hazard. */
const services: readonly string[] = ['gas pipe', 'water pipe'];
/** What the clauses name, by the words that owners type: piping, and metal that forms the frame of a building. */
const named = /\bpip(?:e|es|ing)\b|steel frame|structural/i;

type Asked = Pick<Facts, 'header' | 'isAmerican' | 'sections' | 'bonding' | 'conductors' | 'site'>;

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
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const { site } = facts;
    const metal = site.metalwork.filter((m) => !leftOut.includes(m.kind) && !isPool(m.kind) && m.present !== 'no');
    if (metal.length === 0) return nothingThere(facts, 'metalwork');
    const distances = { between: apart(site), down: (lightningSystem(facts)?.down ?? []).map((c) => c.id) };
    return metal.map((m) => (m.kind === 'fence' ? ofFence(m, facts, distances) : ofMetal(m, facts, distances)));
  },
});

interface Distances {
  readonly between: ReturnType<typeof apart>;
  /** Ids of the down conductors. */
  readonly down: readonly string[];
}

/** A fence is asked beside a tower or mast, as advice: a person at it touches what a strike lifts. */
function ofFence(m: Metalwork, facts: Asked, distances: Distances): Verdict {
  const v = ofMetal(m, facts, distances);
  if (v.is === 'met') return v;
  const supports = facts.site.supports.filter((s) => s.present !== 'no');
  const near = supports
    .map((s) => distances.between(m.id, s.id))
    .map((d) => (d === null ? 'unknown' : isAtMost(d, fenceM)));
  const at = [m.id];
  if (near.every((n) => n === 'no') && isWhole(facts, 'supports'))
    return { is: 'met', at, because: { key: 'far fence' } };
  if (v.is === 'not met' && near.includes('yes')) return { ...v, severity: 'advice' };
  return v.is === 'not met' ? { is: 'cannot tell', at, because: { key: 'how near' }, settle: { key: 'tape' } } : v;
}

function ofMetal(m: Metalwork, facts: Asked, distances: Distances): Verdict {
  const { bonding } = facts;
  const at = [m.id];
  const reaches = bonding.service.is === 'known' ? bonding.serviceBy.bonds : bonding.earthBy.bonds;
  if (reaches.has(m.id) && isInPieces(m))
    return { is: 'cannot tell', at, because: { key: 'in pieces' }, settle: { key: 'each piece' } };
  if (reaches.has(m.id)) return { is: 'met', at, because: { key: 'bonded' } };
  if (m.bonded !== 'no') return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' } };
  if (m.kind === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'kind unknown' }, settle: { key: 'say what' } };
  const bond = addBond(facts, m.id, bonding.service.part);
  if (named.test(m.kind)) {
    const severity = services.includes(m.kind) ? 'hazard' : 'defect';
    if (m.kind === 'gas pipe') return { is: 'not met', at, because: { key: 'gas not bonded' }, severity, ...bond };
    return { is: 'not met', at, because: { key: 'not bonded' }, severity, ...bond };
  }
  if (m.kind === 'solar array')
    return {
      is: 'not met',
      at,
      because: { key: 'frames of an array' },
      family: 'practice',
      severity: 'defect',
      ...bond,
    };
  const severity = isTouched(m, facts, distances) ? 'defect' : 'advice';
  return { is: 'not met', at, because: { key: 'practice asks' }, family: 'practice', severity, ...bond };
}

/** Within reach of something, or beside what leads a strike down, where a side flash would be a finding under this one. */
function isTouched({ id }: Metalwork, { site }: Asked, { between, down }: Distances): boolean {
  if (withinArmsReach(site).has(id)) return true;
  const beside = down.map((conductor) => between(id, conductor));
  return beside.some((d) => d !== null && isAtMost(d, armsReachM) !== 'no');
}
