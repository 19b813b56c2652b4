import type { Facts } from '../../facts/facts.ts';
import type { Support } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { rodsAt } from './rods-at.ts';

/** 8 ft. */
const rodM = 2.4384;
/** A lattice tower whose legs nobody counted has three or four. */
const fewestLegs = 3;
const mostLegs = 4;

export const electrodeCountPerTowerLeg = rule({
  id: 'electrode-count-per-tower-leg',
  family: 'practice',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'question pool', edition: '2022 to 2030', clause: 'T0B08', provenance: 'second-hand' },
  limits: [{ key: 'rodLengthM', value: rodM, sense: 'least', of: 'each rod' }],
  needs: ['header', 'sections', 'bonding', 'electrodes', 'site'],
  check(facts) {
    const towers = facts.site.supports.filter(
      (s) => s.kind === 'lattice tower' && s.present === 'yes' && s.metal !== 'none',
    );
    return towers.length === 0 ? nothingThere(facts, 'supports') : towers.map((t) => ofTower(t, facts));
  },
});

function ofTower(t: Support, facts: Pick<Facts, 'header' | 'sections' | 'bonding' | 'electrodes' | 'site'>): Verdict {
  const at = [t.id];
  const { least, most } = rodsAt(t.id, facts, rodM);
  if (least >= (t.legs ?? mostLegs)) return { is: 'met', at, because: { key: 'a rod a leg' } };
  // One that is not earthed at all has a worse finding of its own; the doubt about it is one and the same look.
  const under = facts.bonding.earthBy.bonds.has(t.id) ? {} : { under: `mast-grounded:${t.id}` };
  const values = { rods: most, legs: t.legs ?? fewestLegs };
  if (most < values.legs) return { is: 'not met', at, because: { key: 'too few', values }, ...under };
  return { is: 'cannot tell', at, because: { key: 'rods unknown' }, settle: { key: 'look' }, ...under };
}
