import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { lightningMains } from './lightning-mains.ts';

/** 6 AWG copper, 41,100 cmil aluminium. */
const least = { copper: 13.3e-6, aluminium: 20.8e-6, steel: null, cladSteel: null };

export const bondingConductorSizeUs = rule({
  id: 'bonding-conductor-size-us',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'UL 96A', edition: '2007', clause: '9.4.2', provenance: 'read' },
  limits: limitsOf(least),
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    const system = lightningSystem(facts);
    if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const { site, conductors } = facts;
    const mains = new Set(lightningMains(system, conductors).map((c) => c.id));
    const electrodes = site.electrodes.filter((e) => purposesOf(e, facts).has('lightning')).map((e) => e.id);
    const theirs = new Set([...mains, ...electrodes]);
    const bodies = new Set([...site.metalwork, ...site.antennas, ...site.supports].map((p) => p.id));
    const bonds = conductors.filter((c) => {
      const has = (ids: ReadonlySet<string>) => c.ends.some((id) => id !== null && ids.has(id));
      return !mains.has(c.id) && has(theirs) && has(bodies);
    });
    return bonds.length === 0 ? nothingThere(facts, 'conductors') : bonds.map((c) => sectionVerdict(c, least, 'awg'));
  },
});
