import type { ConductorFacts } from '../../facts/facts.ts';
import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { earthingWires } from './earthing-wires.ts';

/** 6 mm² copper or 50 mm² steel; 16 mm² copper where lightning protection shares it; bare in soil 25 mm² copper. */
const alone = { copper: 6e-6, aluminium: null, steel: 50e-6, cladSteel: null };
const shared = { ...alone, copper: 16e-6 };
const inSoil = { ...alone, copper: 25e-6 };

export const earthingConductorSizeIec = rule({
  id: 'earthing-conductor-size-iec',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 60364-5-54', edition: '2011', clause: '542.3', provenance: 'memory' },
  since: 2011,
  limits: [
    ...limitsOf(alone),
    { key: 'areaM2', value: shared.copper, sense: 'least', of: 'copper that lightning protection shares' },
    { key: 'areaM2', value: inSoil.copper, sense: 'least', of: 'bare copper in soil' },
  ],
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    const wires = earthingWires(facts.conductors, facts.site);
    if (wires.length === 0) return nothingThere(facts, 'conductors');
    const base = lightningSystem(facts) === null ? alone : shared;
    return wires.map((c) => ofWire(c, base));
  },
});

/** Whether it lies in soil, and bare, matters to copper between the two figures. */
function ofWire(c: ConductorFacts, base: typeof alone): Verdict {
  if (c.inSoil === 'no' || c.wire?.insulated === 'yes') return sectionVerdict(c, base, 'mm2');
  const v = sectionVerdict(c, inSoil, 'mm2');
  const isBareInSoil = c.inSoil === 'yes' && c.wire?.insulated === 'no';
  if (isBareInSoil || v.is !== 'not met') return v;
  const least = sectionVerdict(c, base, 'mm2');
  if (least.is === 'not met') return least;
  const key = c.inSoil === 'yes' ? 'cover unknown' : 'soil unknown';
  return { is: 'cannot tell', at: [c.id], because: { key }, settle: { key: 'say buried' } };
}
