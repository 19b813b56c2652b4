import type { Facts } from '../../facts/facts.ts';
import { setFields } from '../changes/set-field.ts';
import { isWhole, mayReachUntyped, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { mayReachSupplierEarth, reachesSupplierEarth } from '../supplier-earth.ts';

export const arresterBonded = rule({
  id: 'arrester-bonded',
  family: 'code',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: null, clause: '810.20, 810.21; 800.100', provenance: 'second-hand' },
  needs: ['header', 'sections', 'bonding', 'arresters', 'site'],
  check(facts) {
    const { bonding, arresters } = facts;
    if (arresters.length === 0) return nothingThere(facts, 'arresters');
    return arresters.map((a): Verdict => {
      const at = [a.id];
      if (bonding.earthBy.bonds.has(a.id)) return { is: 'met', at, because: { key: 'bonded' } };
      if (reachesSupplierEarth(facts, a.id))
        return { is: 'cannot tell', at, because: { key: 'supplier only' }, settle: { key: 'ask about earth' } };
      if (mayReachSupplierEarth(facts, a.id))
        return { is: 'cannot tell', at, because: { key: 'supply unknown' }, settle: { key: 'find supply' } };
      if (bonding.earthBy.perhaps.has(a.id) || a.part.bonded === 'unknown' || mayReachUntyped(facts, a.id)) {
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
      }
      if (a.part.bonded !== 'no' && !isWhole(facts, 'conductors')) {
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
      }
      return { is: 'not met', at, because: { key: 'floating' }, untied: at, ...ontoPanel(a.id, facts) };
    });
  },
});

/** Onto an entry panel of the file that is itself tied to an electrode. */
function ontoPanel(id: string, { site, bonding }: Pick<Facts, 'site' | 'bonding'>) {
  const panel = site.bars.find((b) => b.kind === 'entry panel' && bonding.earthBy.bonds.has(b.id));
  return panel === undefined ? {} : setFields('arresters', id, { on: panel.id });
}
