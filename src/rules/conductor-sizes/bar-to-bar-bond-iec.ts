import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { earthingWires } from './earthing-wires.ts';
import { isBefore2010 } from './iec-bond-editions.ts';

/** 16 mm² copper, 25 mm² aluminium, 50 mm² steel; in the 2006 edition 14 and 22. */
const least = { copper: 16e-6, aluminium: 25e-6, steel: 50e-6, cladSteel: null };
const edition2006 = { ...least, copper: 14e-6, aluminium: 22e-6 };

export const barToBarBondIec = rule({
  id: 'bar-to-bar-bond-iec',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: 'Table 8', provenance: 'memory' },
  clauses: [
    { from: 2006, clause: 'Table 8' },
    { from: 2010, clause: 'Table 8' },
  ],
  limits: limitsOf(least),
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    if (lightningSystem(facts) === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const { site, conductors } = facts;
    const bars = new Set(site.bars.map((b) => b.id));
    const other = new Set([...bars, ...site.electrodes.map((e) => e.id)]);
    const bonds = conductors.filter(({ ends }) => {
      const [from, to] = ends;
      return from !== null && to !== null && (bars.has(from) || bars.has(to)) && other.has(from) && other.has(to);
    });
    if (bonds.length === 0) return nothingThere(facts, 'conductors');
    const asked = isBefore2010(facts.header) ? edition2006 : least;
    const earthing = new Set(earthingWires(conductors, site).map((c) => c.id));
    return bonds.map((c): Verdict => {
      const v = sectionVerdict(c, asked, 'mm2');
      if (v.is !== 'not met') return v;
      const lesser = earthing.has(c.id) ? 'earthing-conductor-size-iec' : 'main-bonding-size-iec';
      return { ...v, under: `${lesser}:${c.id}` };
    });
  },
});
