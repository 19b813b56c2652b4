import type { Facts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import type { Answer, Conductor, Guy, Site } from '../../site/site.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { wiresOn } from '../wires-on.ts';

export const guyAnchorGrounded = rule({
  id: 'guy-anchor-grounded',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'TIA-222', edition: 'F, G', clause: 'protective grounding', provenance: 'second-hand' },
  needs: ['header', 'sections', 'site', 'bonding'],
  check(facts) {
    const guys = facts.site.supports
      .flatMap((s) => (s.present === 'no' ? [] : s.guys))
      .filter((g) => g.metal !== 'none');
    if (guys.length === 0) return nothingThere(facts, 'supports');
    return guys.map((g): Verdict => ofGuy(g, facts));
  },
});

function ofGuy(g: Guy, facts: Pick<Facts, 'header' | 'sections' | 'site' | 'bonding'>): Verdict {
  const at = [g.id];
  const clamped = clampedTo(g, facts.site);
  const ends = clamped.filter((c) => c.condition !== 'open').map((c) => leadsToElectrode(c, g, facts));
  if (ends.includes('yes')) return { is: 'met', at, because: { key: 'electrode' } };
  const isOpen = ends.includes('unknown') || (g.metal === null && clamped.length === 0);
  if (isOpen || !isWhole(facts, 'conductors'))
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
  return { is: 'not met', at, because: { key: ends.length > 0 ? 'leads elsewhere' : 'no electrode' } };
}

/** A conductor meets the guy (at its anchor or above the turnbuckle), burned open or not: somebody held it for metal. */
function clampedTo(g: Guy, site: Site): readonly Conductor[] {
  return (wiresOn(site.conductors).get(g.id) ?? []).filter((c) => c.present !== 'no');
}

const pointsOf = (c: Conductor) => [c.from, c.to, ...c.passes.map((p) => p.at)].map((p) => p.part);

/** Onwards to an electrode, at once or by a bar; the tower that the guy holds is none at the anchor. */
function leadsToElectrode(c: Conductor, g: Guy, { site, bonding }: Pick<Facts, 'site' | 'bonding'>): Answer {
  const isTower = (id: string) => partIndex(site).get(id)?.section === 'supports';
  const others = pointsOf(c).filter((id) => id !== g.id && (id === null || !isTower(id)));
  if (others.some((id) => id !== null && bonding.earthBy.bonds.has(id))) return 'yes';
  return others.some((id) => id === null || bonding.earthBy.perhaps.has(id)) ? 'unknown' : 'no';
}
