import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';

export const earthRodClearOfBuriedServices = rule({
  id: 'earth-rod-clear-of-buried-services',
  family: 'practice',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'memory' },
  needs: ['header', 'sections', 'site'],
  check({ header, sections, site }) {
    const dug = [...site.electrodes, ...site.conductors.filter((c) => c.buriedM !== null && c.buriedM !== 'no')];
    const at = dug.filter((p) => p.known === 'planned' && p.present !== 'no').map((p) => p.id);
    if (at.length === 0) return nothingThere({ sections }, 'electrodes');
    if (header.servicesLocated === 'yes') return [{ is: 'met', at, because: { key: 'located' } }];
    if (header.servicesLocated === 'no') return [{ is: 'not met', at, because: { key: 'not located' } }];
    return [{ is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'locate' } }];
  },
});
