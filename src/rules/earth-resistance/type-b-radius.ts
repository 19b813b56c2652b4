import type { ElectrodeFacts, Facts } from '../../facts/facts.ts';
import type { Answer, Electrode } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';
import { claimsOf } from '../claims.ts';
import { areaInside, courseOf } from '../electrode-places/plan-distance.ts';
import { both, reaches } from '../electrode-sizes/answers.ts';
import { forLightning } from '../electrode-sizes/for-lightning.ts';
import { routeLength } from '../electrode-sizes/route-length.ts';
import { printedShare } from '../electrodes/driven.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
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

type Asked = Pick<Facts, 'header' | 'sections' | 'electrodes' | 'conductors' | 'site'>;

function ofRing(e: ElectrodeFacts, lightningClass: 1 | 2 | 3 | 4, facts: Asked): Verdict {
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
  const more = hasMore(e, limit.high - radius.low, facts);
  if (more === 'yes') return { is: 'met', at, because: { key: 'has more' } };
  if (more === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'perhaps more' }, settle: { key: 'measure the others' } };
  return { is: 'not met', at, because: { key: 'small' }, measured: measured(limit.low) };
}

/** Of a circle of the area that it goes round. */
function meanRadius({ part }: ElectrodeFacts): Interval | null {
  const course = courseOf(part);
  if (part.areaM2 === null && course.length < 4) return null;
  const area = part.areaM2 ?? { low: areaInside(course), high: areaInside(course) };
  return { low: Math.sqrt(area.low / Math.PI), high: Math.sqrt(area.high / Math.PI) };
}

/** For each down conductor, two at least: a run as long as what is missing, or a rod of half of it. */
function hasMore(ring: ElectrodeFacts, missingM: number, facts: Asked): Answer {
  const others = facts.electrodes.filter((e) => e.group !== null && e.group === ring.group && e.id !== ring.id);
  const pieces = others.flatMap((e) => {
    const share = shareAsked(e.part);
    const members = grouped.includes(e.part.kind) ? (e.part.members ?? 1) : 1;
    const long = reaches(e.part.lengthM ?? routeLength(e.part), missingM * (share ?? 1));
    return share === null ? [] : [{ members, long: e.part.present === 'yes' ? long : both(long, 'unknown') }];
  });
  const count = (is: readonly Answer[]) => pieces.filter((p) => is.includes(p.long)).reduce((n, p) => n + p.members, 0);
  const asked = Math.max(2, facts.conductors.filter((c) => c.role === 'down conductor').length);
  if (count(['yes']) >= asked) return 'yes';
  return count(['yes', 'unknown']) >= asked || !isWhole(facts, 'electrodes') ? 'unknown' : 'no';
}

const grouped: readonly string[] = ['rods', 'radial'];

/** Of the missing length: a rod is asked half, a level run all; null: it makes up for nothing. */
function shareAsked({ kind, closed }: Electrode): number | null {
  if (kind === 'rod' || kind === 'rods') return 0.5;
  return kind === 'radial' || (kind === 'buried wire' && closed !== 'yes') ? 1 : null;
}
