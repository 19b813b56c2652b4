import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Answer } from '../../site/site.ts';
import { bestCopper, copperSettles, isThickCopper } from '../copper-section.ts';
import { nothingThere, notWhole } from '../looked-at.ts';
import { passingCases } from '../passing-cases.ts';
import { thickWays } from '../reached-thick.ts';
import { rule, type Verdict } from '../rule.ts';

/** Least section of copper from a rack to the bar, square metres. */
const leastAreaM2 = 16e-6;
const racks: readonly string[] = ['rack', 'cabinet'];

export const racksBonded = rule({
  id: 'racks-bonded',
  family: 'code',
  severity: 'advice',
  codeSets: ['iec'],
  source: { document: 'EN 50310; ISO/IEC 30129', edition: '2016', clause: 'racks', provenance: 'second-hand' },
  limits: [{ key: 'areaM2', value: leastAreaM2, sense: 'least', of: 'copper' }],
  needs: ['header', 'sections', 'bonding', 'boxes', 'conductors', 'site'],
  check(facts) {
    const found = facts.boxes.filter((b) => racks.includes(b.part.kind));
    if (found.length === 0) return nothingThere(facts, 'equipment');
    const bars = facts.site.bars.filter((b) => b.present !== 'no').map((b) => b.id);
    const { part: service } = facts.bonding.service;
    const targets = new Set(service === null ? bars : [...bars, service]);
    const stops = stopsOf(targets, facts);
    const way = thickWays(facts, targets, (c) => isThick(c, stops));
    const verdicts = found.flatMap((b) => ofRack(b.id, targets, way, facts));
    return verdicts.length > 0 ? verdicts : [{ is: 'not applicable', because: { key: 'no conductor' } }];
  },
});

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'boxes' | 'conductors' | 'site'>;

/** Copper of that section all the way to a bar, over other racks too; a rack without a conductor is asked about like any other case. */
function ofRack(
  id: string,
  targets: ReadonlySet<string>,
  way: (from: string) => Answer,
  facts: Asked,
): readonly Verdict[] {
  const at = [id];
  const own = facts.conductors.filter((c) => c.ends.includes(id) || c.passes.includes(id));
  if (own.length === 0) return [];
  const { is, ...figure } = bestCopper(own, leastAreaM2);
  if (is === 'thin') return [{ is: 'not met', at, because: { key: 'thin' }, ...figure }];
  const reaches = way(id);
  if (is === 'enough' && reaches === 'yes') return [{ is: 'met', at, because: { key: 'thick' }, ...figure }];
  if (reaches === 'no') return [withoutWay(id, targets, facts)];
  if (is === 'enough') return [wayUnknown(at)];
  return [{ is: 'cannot tell', at, because: { key: is }, settle: { key: copperSettles[is] } }];
}

/** Where a bond goes no further: cases that pass none on, and metal by whether it leads through; others pass it. */
function stopsOf(targets: ReadonlySet<string>, { boxes, site }: Asked): ReadonlyMap<string, Answer> {
  const stops = new Map<string, Answer>();
  for (const { id, continuous } of site.metalwork) if (continuous !== 'yes') stops.set(id, continuous);
  for (const { id, part } of boxes) if (!passingCases.includes(part.kind) && !targets.has(id)) stops.set(id, 'no');
  return stops;
}

/** A conductor to a case that passes no bond on leads no further, to a pipe or rail perhaps. */
function isThick(c: ConductorFacts, stops: ReadonlyMap<string, Answer>): Answer {
  const met = [...c.ends, ...c.passes].flatMap((id) => stops.get(id ?? '') ?? []);
  if (met.includes('no')) return 'no';
  const answer = isThickCopper(c, leastAreaM2);
  return answer === 'yes' && met.length > 0 ? 'unknown' : answer;
}

function withoutWay(id: string, targets: ReadonlySet<string>, facts: Asked): Verdict {
  const { bonding } = facts;
  const group = bonding.groupOf.get(id) ?? '';
  if (bonding.openEnds.has(group) || notWhole(facts, ['conductors', 'bars']).length > 0) return wayUnknown([id]);
  const isOnBar = [...targets].some((bar) => bonding.groupOf.get(bar) === group);
  return { is: 'not met', at: [id], because: { key: isOnBar ? 'thin further on' : 'not to a bar' } };
}

function wayUnknown(at: readonly string[]): Verdict {
  return { is: 'cannot tell', at, because: { key: 'way unknown' }, settle: { key: 'follow it' } };
}
