import type { Reading } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const resistanceHasProvenance = rule({
  id: 'resistance-has-provenance',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: {
    document: 'NFPA 780; IEC 62305-3',
    edition: null,
    clause: 'Annex D; E.7 (records)',
    provenance: 'memory',
  },
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const read = site.readings.filter((r) => r.kind === 'fall of potential' && r.resistance.length > 0);
    const readAt = new Set(read.map((r) => r.on?.part));
    const stated = site.electrodes.filter((e) => e.resistance !== null && !readAt.has(e.id) && e.present !== 'no');
    const verdicts = [...read.map(ofReading), ...stated.map((e) => ofStated(e.id))];
    return verdicts.length === 0 ? nothingThere({ sections }, 'electrodes') : verdicts;
  },
});

/** The kind of a reading is its method; the rest is what a second person needs to read the same. */
function ofReading(r: Reading): Verdict {
  const at = [r.id];
  const missing = (['date', 'weather', 'instrument', 'by'] as const).filter((field) => r[field] === null);
  if (missing.length === 0) return { is: 'met', at, because: { key: 'recorded' } };
  return { is: 'not met', at, because: { key: 'gaps', values: { missing } } };
}

/** A bare figure may well have a sheet behind it. */
function ofStated(id: string): Verdict {
  return { is: 'cannot tell', at: [id], because: { key: 'stated' }, settle: { key: 'find the sheet' } };
}
