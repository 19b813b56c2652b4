import type { WaysOfPart } from '../../bonding/bonding.ts';
import type { Site } from '../../site/site.ts';
import { isAtMost } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Ours: about 1 µH, and more than 1 kV at 1 kA/µs, for each metre. */
const shortM = 1;
/** 20 ft: beyond it is a defect, by analogy with NFPA 70 800.100(A)(4). */
const farM = 6.096;

export const bondRunShort = rule({
  id: 'bond-run-short',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'ours' },
  limits: [
    { key: 'wayLengthM', value: shortM, sense: 'most' },
    { key: 'wayLengthM', value: farM, sense: 'most', of: 'a defect beyond' },
  ],
  needs: ['sections', 'bonding', 'site'],
  check({ sections, bonding, site }) {
    const asked = new Set(entryParts(site));
    const ways = bonding.ways.filter((w) => asked.has(w.part) && w.toElectrode !== null);
    return ways.length === 0 ? nothingThere({ sections }, 'bars') : ways.map(ofWay);
  },
});

/**
 * Entry panels, and arresters that stand alone. One on the mains leads off between the conductors of the panel that it is
 * in; how far that panel's electrode is does not change what it lets through.
 */
function entryParts(site: Site): readonly string[] {
  const bars = new Set(site.bars.map((b) => b.id));
  const ofLines = site.arresters.filter((a) => a.kind !== 'mains protector');
  const alone = ofLines.filter((a) => a.on?.part == null || !bars.has(a.on.part)).map((a) => a.id);
  return [...site.bars.filter((b) => b.kind === 'entry panel').map((b) => b.id), ...alone];
}

function ofWay({ part, toElectrode }: WaysOfPart): Verdict {
  const at = [part];
  const { lengthM, lengthAtLeastM, inductanceH, to } = toElectrode!;
  const values = { electrode: to, inductanceH };
  if (lengthM === null && lengthAtLeastM <= shortM) {
    return { is: 'cannot tell', at, because: { key: 'length unknown', values }, settle: { key: 'measure it' } };
  }
  const value = lengthM ?? { low: lengthAtLeastM, high: Infinity };
  const measured = { key: 'wayLengthM', value, limit: shortM, sense: 'most' } as const;
  const short = isAtMost(value, shortM);
  if (short === 'yes') return { is: 'met', at, because: { key: 'short', values }, measured };
  if (short === 'no' && isAtMost(value, farM * 1.002) !== 'no')
    return { is: 'not met', at, because: { key: 'long', values }, measured };
  if (short === 'no') {
    const beyond = { ...measured, limit: farM };
    return { is: 'not met', at, because: { key: 'far', values }, severity: 'defect', measured: beyond };
  }
  return { is: 'cannot tell', at, because: { key: 'length unknown', values }, settle: { key: 'measure it' }, measured };
}
