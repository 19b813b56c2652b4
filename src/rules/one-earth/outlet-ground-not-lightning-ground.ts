import { rule } from '../rule.ts';
import { heldBy } from './held-by.ts';

export const outletGroundNotLightningGround = rule({
  id: 'outlet-ground-not-lightning-ground',
  family: 'code',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: null, clause: '250.121, 810.21(F)', provenance: 'memory' },
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'site'],
  check(facts) {
    const { bonding, site } = facts;
    const parts = [...site.electrodes, ...site.supports, ...site.antennas, ...site.bars, ...site.arresters].map(
      (p) => p.id,
    );
    return heldBy(facts, parts, bonding.serviceBy.bondsAndCords, { because: { key: 'cord only' } });
  },
});
