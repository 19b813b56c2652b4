import { addBond } from '../changes/add-bond.ts';
import { isolatedGroups, mayGoOn, underGroup } from '../isolated-groups.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { ownSupplyOf, twoSupplies } from '../one-earth/own-supply.ts';
import { rule, type Verdict } from '../rule.ts';

export const panelTiedToService = rule({
  id: 'panel-tied-to-service',
  family: 'code',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: null, clause: '810.21(J)', provenance: 'second-hand' },
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'site'],
  check(facts) {
    const { bonding, site } = facts;
    const bars = site.bars.filter((b) => b.present !== 'no' && b.id !== bonding.service.part);
    if (bars.length === 0) return nothingThere(facts, 'bars');
    if (bonding.service.is === 'none') return [{ is: 'not applicable', because: { key: 'field station' } }];
    const groups = isolatedGroups(bonding, () => true);
    const tie = (id: string) => ({
      untied: [id],
      ...underGroup(id, groups),
      ...addBond(facts, id, bonding.service.part),
    });
    return bars.map((bar): Verdict => {
      const at = [bar.id];
      const isOpen = mayGoOn(bonding, bar.id);
      const perhaps = bonding.serviceBy.perhaps.has(bar.id) || bonding.earthBy.perhaps.has(bar.id);
      const own = ownSupplyOf(bar.id, facts);
      if (bar.bonded === 'no' && !perhaps && !isOpen && own === null) {
        return { is: 'not met', at, because: { key: 'apart' }, ...tie(bar.id) };
      }
      if (bonding.service.is === 'unknown') {
        return { is: 'cannot tell', at, because: { key: 'service unknown' }, settle: { key: 'find service' } };
      }
      if (bonding.serviceBy.bonds.has(bar.id)) return { is: 'met', at, because: { key: 'tied' } };
      if (bonding.serviceBy.perhaps.has(bar.id) || isOpen || !isWhole(facts, 'conductors')) {
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
      }
      if (own !== null) return { ...twoSupplies(at, own), ...underGroup(bar.id, groups) };
      return { is: 'not met', at, because: { key: 'apart' }, ...tie(bar.id) };
    });
  },
});
