import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { isBefore2010 } from './iec-bond-editions.ts';

/** 6 mm² copper, 10 mm² aluminium, 16 mm² steel; in the 2006 edition 5 and 8. */
const least = { copper: 6e-6, aluminium: 10e-6, steel: 16e-6, cladSteel: null };
const edition2006 = { ...least, copper: 5e-6, aluminium: 8e-6 };

export const bodyToBarBondIec = rule({
  id: 'body-to-bar-bond-iec',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: 'Table 9', provenance: 'memory' },
  clauses: [
    { from: 2006, clause: 'Table 9' },
    { from: 2010, clause: 'Table 9' },
  ],
  limits: limitsOf(least),
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    if (lightningSystem(facts) === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const { site, conductors } = facts;
    const bars = new Set(site.bars.map((b) => b.id));
    const bodies = new Set([...site.metalwork, ...site.equipment].map((p) => p.id));
    const has = (ends: readonly (string | null)[], ids: ReadonlySet<string>) =>
      ends.some((id) => id !== null && ids.has(id));
    const bonds = conductors.filter(({ ends }) => has(ends, bars) && has(ends, bodies));
    if (bonds.length === 0) return nothingThere(facts, 'conductors');
    const asked = isBefore2010(facts.header) ? edition2006 : least;
    return bonds.map((c): Verdict => {
      const v = sectionVerdict(c, asked, 'mm2');
      return v.is === 'not met' ? { ...v, under: `main-bonding-size-iec:${c.id}` } : v;
    });
  },
});
