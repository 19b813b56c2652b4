import { readWire } from '../../materials/wire.ts';
import type { Site } from '../../site/site.ts';
import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { antennaLeads } from './leads-of.ts';
import { sizedElsewhere } from './sized-elsewhere.ts';
import { transmitters } from './transmitters.ts';

/** 10 AWG copper, bronze or copper-clad steel. */
const least = { copper: 5.26e-6, aluminium: null, steel: null, cladSteel: 5.26e-6 };

export const transmitProtectiveGroundSize = rule({
  id: 'transmit-protective-ground-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '810.58(B)', provenance: 'memory' },
  limits: limitsOf(least),
  needs: ['sections', 'conductors', 'site'],
  check(facts) {
    const leads = antennaLeads(facts);
    if (transmitters(facts.site).size === 0 || leads.length === 0) return nothingThere(facts, 'conductors');
    const floor = Math.max(least.copper, leadInArea(facts.site));
    const asked = { ...least, copper: floor, cladSteel: floor };
    return sizedElsewhere(
      leads.map((c) => sectionVerdict(c, asked, 'awg')),
      'mast-ground-size',
    );
  },
});

/** Of the thickest lead-in of open wire whose size was typed; a coaxial one asks for the floor alone. */
function leadInArea({ lines }: Site): number {
  const open = lines.filter((l) => l.present !== 'no' && (l.kind === 'open-wire' || l.kind === 'single wire'));
  const areas = open.map((l) => {
    const read = readWire(l.cable ?? '');
    return read.ok ? (read.wire.areaM2?.low ?? 0) : 0;
  });
  return Math.max(0, ...areas);
}
