import type { SiteChange } from '../../site/change.ts';
import type { Arrester, Site } from '../../site/site.ts';
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
    const units = site.arresters.filter((a) => a.kind === 'mains protector' && a.present !== 'no');
    const places = units.map((a) => placeOf(a, site));
    const protector = units.find((a, i) => places[i] === 'at the service' && a.present === 'yes')?.id;
    if (protector !== undefined) return [{ is: 'met', at, because: { key: 'there', values: { protector } } }];
    if (units.some((_, i) => places[i] !== 'elsewhere'))
      return [{ is: 'cannot tell', at, because: { key: 'place unknown' }, settle: { key: 'look where' } }];
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

/** Boxes and bars where the supply comes in. */
const ofSupply: readonly string[] = [
  'service panel',
  'meter box',
  'main earthing bar',
  'intersystem bonding termination',
];

/** One that the supply passes before it reaches a panel, or that is on what belongs to the service; one farther in is not. */
function placeOf({ id, on, where }: Arrester, { header, equipment, bars, lines }: Site) {
  const passing = lines.filter((l) => l.kind === 'mains' && l.path.some((s) => s.is === 'part' && s.at.part === id));
  const carrier = [...equipment, ...bars].find((p) => p.id === on?.part);
  const isOfSupply = carrier !== undefined && (carrier.id === header.service || ofSupply.includes(carrier.kind));
  if (isOfSupply || passing.some((l) => l.path.some((s) => s.is === 'street'))) return 'at the service';
  const isFar = where !== null && where !== (equipment.find((e) => e.id === header.service)?.where ?? where);
  return carrier === undefined && passing.length === 0 && !isFar ? 'unknown' : 'elsewhere';
}
