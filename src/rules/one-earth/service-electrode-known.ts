import { addRod } from '../changes/add-rod.ts';
import { rule } from '../rule.ts';
import { isEarthedBySupplier, maySupplierEarth } from '../supplier-earth.ts';

export const serviceElectrodeKnown = rule({
  id: 'service-electrode-known',
  family: 'code',
  severity: 'hazard',
  codeSets: ['any'],
  source: {
    document: 'NFPA 70; IEC 60364-5-54',
    edition: null,
    clause: '250.24, 250.50; 542.1',
    provenance: 'second-hand',
  },
  first: true,
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'site'],
  check(facts) {
    const { header, sections, bonding, site } = facts;
    const { service } = bonding;
    if (service.is === 'none') return [{ is: 'not applicable', because: { key: 'none' } }];
    if (service.is === 'unknown' || service.part === null) {
      return [{ is: 'cannot tell', at: [], because: { key: 'service unknown' }, settle: { key: 'find service' } }];
    }
    const at = [service.part];
    if (bonding.earthBy.bonds.has(service.part)) return [{ is: 'met', at, because: { key: 'tied' } }];
    if (isEarthedBySupplier({ header })) return [{ is: 'not applicable', because: { key: 'by the supply' } }];
    const looked = sections.electrodes !== 'missing' && !header.incomplete.includes('electrodes');
    if (sections.electrodes === 'none' && looked) {
      if (maySupplierEarth({ header }))
        return [{ is: 'cannot tell', at, because: { key: 'supply unknown' }, settle: { key: 'find supply' } }];
      const change = addRod(facts, service.part);
      return [{ is: 'not met', at, because: { key: 'no electrode' }, change }];
    }
    const perhaps = site.electrodes.filter((e) => e.present === 'unknown' && bonding.serviceBy.perhaps.has(e.id));
    if (perhaps.length > 0) {
      const values = { electrodes: perhaps.map((e) => e.id) };
      return [{ is: 'cannot tell', at, because: { key: 'not seen', values }, settle: { key: 'see it', values } }];
    }
    return [{ is: 'cannot tell', at, because: { key: 'not found' }, settle: { key: 'find electrode' } }];
  },
});
