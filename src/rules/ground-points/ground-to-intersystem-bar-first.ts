import { isWhole, nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { antennaGrounds, antennaSide } from './antenna-grounds.ts';

export const groundToIntersystemBarFirst = rule({
  id: 'ground-to-intersystem-bar-first',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2008', clause: '810.21(F)(1)', provenance: 'second-hand' },
  since: 2008,
  needs: ['header', 'sections', 'bonding', 'masts', 'arresters', 'conductors', 'site'],
  check(facts) {
    const bars = facts.site.bars.filter((b) => b.kind === 'intersystem bonding termination' && b.present !== 'no');
    if (bars.length === 0) return nothingThere(facts, 'bars');
    const at = bars.map((b) => b.id);
    const isGrounded = [...antennaSide(facts)].some((id) => facts.bonding.earthBy.bonds.has(id));
    if (!isGrounded) return [{ is: 'not applicable', because: { key: 'no ground' } }];
    const grounds = antennaGrounds(facts);
    const lands = grounds.filter((g) => at.includes(g.lands.id)).map((g) => g.conductor);
    // over the bar of the station, on which a ground of the antenna lands
    const between = grounds.flatMap((g) => (g.lands.section === 'bars' ? [g.lands.id] : []));
    const onward = facts.conductors.filter((c) =>
      [between, at].every((ids) => c.ends.some((id) => ids.includes(id ?? ''))),
    );
    if (lands.length + onward.length > 0) {
      const by = [...new Set([...lands, ...onward].map((c) => c.id))];
      return [{ is: 'met', at, because: { key: 'there', values: { by } } }];
    }
    if (!isWhole(facts, 'conductors'))
      return [{ is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } }];
    const isBySoil = grounds.some((g) => g.lands.section === 'electrodes' && facts.bonding.serviceBy.bonds.has(g.from));
    // an electrode of the antenna's own, bonded to the service, is a way that the code knows too (810.21(J))
    if (isBySoil) return [{ is: 'not met', at, because: { key: 'own electrode' }, severity: 'advice' }];
    return [{ is: 'not met', at, because: { key: 'elsewhere' } }];
  },
});
