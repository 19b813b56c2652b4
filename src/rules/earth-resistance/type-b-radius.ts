import type { ElectrodeFacts, Facts } from '../../facts/facts.ts';
import type { Interval } from '../../units/interval.ts';
import { claimsOf } from '../claims.ts';
import { areaInside, courseOf } from '../electrode-places/plan-distance.ts';
import { forLightning } from '../electrode-sizes/for-lightning.ts';
import { printedShare } from '../electrodes/driven.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { leastLength } from './least-length.ts';

export const typeBRadius = rule({
  id: 'type-b-radius',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: '5.4.2.2', provenance: 'second-hand' },
  limits: [{ key: 'radiusM', value: 5, sense: 'least', of: 'classes III and IV' }],
  needs: ['header', 'sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const { lightningClass } = claimsOf(facts.header);
    if (lightningClass === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const rings = forLightning(facts).filter((e) => e.part.closed === 'yes');
    return rings.length === 0 ? nothingThere(facts, 'electrodes') : rings.map((e) => ofRing(e, lightningClass, facts));
  },
});

function ofRing(
  e: ElectrodeFacts,
  lightningClass: 1 | 2 | 3 | 4,
  facts: Pick<Facts, 'electrodes' | 'conductors' | 'site'>,
): Verdict {
  const at = [e.id];
  const radius = meanRadius(e);
  const limit = leastLength(lightningClass, facts.site);
  if (radius === null)
    return { is: 'cannot tell', at, because: { key: 'area unknown' }, settle: { key: 'measure round it' } };
  const measured = (least: number) => ({ key: 'radiusM', value: radius, limit: least, sense: 'least' }) as const;
  if (radius.low >= limit.high * printedShare)
    return { is: 'met', at, because: { key: 'wide enough' }, measured: measured(limit.high) };
  if (radius.high >= limit.low * printedShare)
    return { is: 'cannot tell', at, because: { key: 'soil unknown' }, settle: { key: 'measure the soil' } };
  if (hasMore(e, limit.high - radius.low, facts)) return { is: 'met', at, because: { key: 'has more' } };
  return { is: 'not met', at, because: { key: 'small' }, measured: measured(limit.low) };
}

/** Of a circle of the area that it goes round. */
function meanRadius({ part }: ElectrodeFacts): Interval | null {
  const course = courseOf(part);
  if (part.areaM2 === null && course.length < 4) return null;
  const area = part.areaM2 ?? { low: areaInside(course), high: areaInside(course) };
  return { low: Math.sqrt(area.low / Math.PI), high: Math.sqrt(area.high / Math.PI) };
}

/** A rod of half the missing length for each down conductor, two at least. */
function hasMore(
  ring: ElectrodeFacts,
  missingM: number,
  { electrodes, conductors }: Pick<Facts, 'electrodes' | 'conductors'>,
): boolean {
  const rods = electrodes.filter((e) => e.group === ring.group && (e.part.kind === 'rod' || e.part.kind === 'rods'));
  const long = rods.filter((e) => e.part.lengthM !== null && e.part.lengthM.low >= (missingM / 2) * printedShare);
  const count = long.reduce((n, e) => n + (e.part.kind === 'rods' ? (e.part.members ?? 1) : 1), 0);
  return count >= Math.max(2, conductors.filter((c) => c.role === 'down conductor').length);
}
