import type { SiteChange } from '../../site/change.ts';
import type { Site } from '../../site/site.ts';
import { freeId } from '../changes/free-id.ts';
import { isWhole } from '../looked-at.ts';
import { rule } from '../rule.ts';

export const serviceSurgeProtector = rule({
  id: 'service-surge-protector',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: '2020', clause: '230.67', provenance: 'memory' },
  needs: ['header', 'sections', 'site', 'bonding'],
  check(facts) {
    const { site, bonding } = facts;
    if (bonding.service.is === 'none' || facts.header.without.includes('mains')) {
      return [{ is: 'not applicable', because: { key: 'no mains' } }];
    }
    const at = bonding.service.part === null ? [] : [bonding.service.part];
    const protector = mainsProtector(site);
    if (protector !== null) return [{ is: 'met', at, because: { key: 'there', values: { protector } } }];
    if (!isWhole(facts, 'arresters'))
      return [{ is: 'cannot tell', at, because: { key: 'not looked' }, settle: { key: 'look' } }];
    return [{ is: 'not met', at, because: { key: 'none there' }, ...added(site, bonding.service.part) }];
  },
});

/** One in the box of the service, still to be fitted. */
function added(site: Site, service: string | null): { readonly change?: readonly SiteChange[] } {
  if (!site.equipment.some((e) => e.id === service)) return {};
  const fields = { kind: 'mains protector', on: service!, known: 'planned' };
  return { change: [{ is: 'add', section: 'arresters', id: freeId(site, 'mains-protector'), fields }] };
}

function mainsProtector(site: Site): string | null {
  return site.arresters.find((a) => a.kind === 'mains protector' && a.present !== 'no')?.id ?? null;
}
