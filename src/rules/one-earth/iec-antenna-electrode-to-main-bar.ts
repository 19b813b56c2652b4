import { addBond } from '../changes/add-bond.ts';
import { isolatedGroups } from '../isolated-groups.ts';
import { isWhole } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { leadingFinding, underLeading } from './leading-finding.ts';
import { ownSupplyOf, twoSupplies } from './own-supply.ts';

export const iecAntennaElectrodeToMainBar = rule({
  id: 'iec-antenna-electrode-to-main-bar',
  family: 'code',
  severity: 'hazard',
  codeSets: ['iec'],
  source: { document: 'IEC 60728-11', edition: '2016, 2023', clause: 'outdoor antennas', provenance: 'second-hand' },
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'site'],
  check(facts) {
    const { bonding, site } = facts;
    const outdoor = new Set([...site.antennas, ...site.supports].map((p) => p.id));
    const earthed = bonding.groups.filter((g) => g.electrodes.length > 0 && g.parts.some((id) => outdoor.has(id)));
    if (earthed.length === 0 || bonding.service.is === 'none')
      return [{ is: 'not applicable', because: { key: 'none' } }];
    if (bonding.service.is === 'unknown') {
      const at = earthed.flatMap((g) => g.electrodes);
      return [{ is: 'cannot tell', at, because: { key: 'service unknown' }, settle: { key: 'find service' } }];
    }
    const isolated = isolatedGroups(bonding, () => true);
    return earthed.map((g): Verdict => {
      if (g.hasService) return { is: 'met', at: g.electrodes, because: { key: 'tied' } };
      const apart = isolated.find((i) => i.id === g.id);
      if (apart === undefined || !isWhole(facts, 'conductors')) {
        return { is: 'cannot tell', at: g.electrodes, because: { key: 'perhaps' }, settle: { key: 'trace' } };
      }
      const own = ownSupplyOf(g.id, facts);
      if (own !== null) return twoSupplies(g.electrodes, own);
      const leading = leadingFinding(facts, g.electrodes);
      const under = underLeading('iec-antenna-electrode-to-main-bar', leading);
      const tie = addBond(facts, g.electrodes[0]!, bonding.service.part);
      return { is: 'not met', at: g.electrodes, because: { key: 'apart' }, ...under, ...tie };
    });
  },
});
