import { readWire } from '../../materials/wire.ts';
import type { Line } from '../../site/site.ts';
import { panelLeads } from '../conductors/antenna-ties.ts';
import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
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
  needs: ['sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const leads = [...antennaLeads(facts), ...panelLeads(facts)];
    if (transmitters(facts.site).size === 0 || leads.length === 0) return nothingThere(facts, 'conductors');
    const sizes = facts.site.lines.filter(isOpenWire).map(sizeOf);
    const floor = Math.max(least.copper, ...sizes.map((s) => s.areaM2 ?? 0));
    const asked = { ...least, copper: floor, cladSteel: floor };
    const unsized = sizes.filter((s) => s.areaM2 === null).map((s) => s.id);
    return sizedElsewhere(
      leads.map((c) => orUnsized(sectionVerdict(c, asked, 'awg'), unsized)),
      'mast-ground-size',
    );
  },
});

const isOpenWire = (l: Line) => l.present !== 'no' && (l.kind === 'open-wire' || l.kind === 'single wire');

/** Least section of the wires of an open lead-in, square metres, as its `cable` says; null: nobody typed it. */
function sizeOf({ id, cable }: Line) {
  const read = readWire(cable ?? '');
  return { id, areaM2: read.ok ? (read.wire.areaM2?.low ?? null) : null };
}

/** A lead-in that nobody sized may be thicker than the lead; a coaxial one asks for the floor alone. */
function orUnsized(v: Verdict, unsized: readonly string[]): Verdict {
  if (v.is !== 'met' || unsized.length === 0) return v;
  const values = { lines: unsized };
  return {
    is: 'cannot tell',
    at: v.at,
    because: { key: 'lead-in unknown', values },
    settle: { key: 'read it', values },
  };
}
