import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { transmitters } from './transmitters.ts';

/** 14 AWG copper. */
const least = { copper: 2.08e-6, aluminium: null, steel: null, cladSteel: null };

export const transmitOperatingGroundSize = rule({
  id: 'transmit-operating-ground-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '810.58(C)', provenance: 'memory' },
  limits: limitsOf(least),
  needs: ['sections', 'conductors', 'site'],
  check(facts) {
    const { site, conductors } = facts;
    const tuners = site.equipment.filter((e) => e.kind === 'tuner').map((e) => e.id);
    const boxes = new Set([...transmitters(site), ...tuners]);
    const ground = new Set([...site.bars, ...site.electrodes].map((p) => p.id));
    const has = (ends: readonly (string | null)[], ids: ReadonlySet<string>) =>
      ends.some((id) => id !== null && ids.has(id));
    const own = conductors.filter((c) => has(c.ends, boxes) && has(c.ends, ground));
    // so thin that nobody is asked who typed no size
    const sized = own.filter((c) => c.wire !== null);
    if (sized.length === 0 && own.length > 0) return [{ is: 'not looked at', because: { key: 'asked elsewhere' } }];
    if (sized.length === 0) return nothingThere(facts, 'conductors');
    return sized.map((c) => sectionVerdict(c, least, 'awg'));
  },
});
