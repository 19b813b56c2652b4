import type { Facts } from '../../facts/facts.ts';
import { isListedElectrode } from '../electrodes/listed-electrode.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { antennaSide } from './antenna-grounds.ts';

export const groundPointNoService = rule({
  id: 'ground-point-no-service',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '810.21(F)(3)', provenance: 'memory' },
  needs: ['header', 'sections', 'bonding', 'masts', 'arresters', 'conductors', 'site'],
  check(facts) {
    const { bonding, site } = facts;
    if (bonding.service.is !== 'none') return [{ is: 'not applicable', because: { key: 'has service' } }];
    const own = [...antennaSide(facts)].filter((id) => bonding.earthBy.bonds.has(id));
    if (own.length === 0) return nothingThere(facts, 'antennas');
    const ids = new Set(own.map((id) => bonding.groupOf.get(id)));
    const groups = bonding.groups.filter((g) => ids.has(g.id) && g.electrodes.length > 0);
    return groups.map((g) => ofGroup(g.electrodes, site));
  },
});

function ofGroup(at: readonly string[], site: Facts['site']): Verdict {
  const electrodes = site.electrodes.filter((e) => at.includes(e.id));
  const answers = electrodes.map(isListedElectrode);
  if (answers.includes('yes')) return { is: 'met', at, because: { key: 'listed' } };
  if (answers.includes('unknown'))
    return { is: 'cannot tell', at, because: { key: 'kind unknown' }, settle: { key: 'look' } };
  return { is: 'not met', at, because: { key: 'not listed' } };
}
