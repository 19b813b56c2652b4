import type { Facts, MastFacts } from '../../facts/facts.ts';
import { isAtLeast } from '../../units/interval.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Least section of the conductor at a field mast, square metres (6 AWG as printed). */
const leastAreaM2 = 13.3e-6;
const noMast: readonly string[] = ['building face', 'tree', 'wood pole'];
/** What people sit in and what feeds them, by the words that owners type. */
const shelters = /generator|shelter|vehicle|trailer|caravan|van\b|truck|car\b|container/i;

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'masts' | 'conductors' | 'site'>;

export const fieldMastRod = rule({
  id: 'field-mast-rod',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'Army field grounding practice', edition: null, clause: null, provenance: 'read' },
  limits: [{ key: 'areaM2', value: leastAreaM2, sense: 'least', of: 'copper' }],
  needs: ['header', 'sections', 'bonding', 'masts', 'conductors', 'site'],
  check(facts) {
    if (facts.header.temporary !== 'yes') return [{ is: 'not applicable', because: { key: 'not temporary' } }];
    const masts = facts.masts.filter((m) => m.metal === 'yes' && !noMast.includes(m.part.kind));
    if (masts.length === 0) return nothingThere(facts, 'supports');
    return masts.map((m) => ofMast(m, facts));
  },
});

/** A mast on no electrode is a finding of the code where one asks it; this one goes under it. */
function ofMast({ id }: MastFacts, facts: Asked): Verdict {
  const at = [id];
  const { bonding, conductors } = facts;
  const under = {
    under: ['iec', 'uk'].includes(facts.header.region) ? `iec-mast-earthed:${id}` : `mast-grounded:${id}`,
  };
  const isOpen = bonding.earthBy.perhaps.has(id) || !isWhole(facts, 'conductors');
  if (!bonding.earthBy.bonds.has(id))
    return isOpen ? cannotTell(at, 'rod unknown') : { is: 'not met', at, because: { key: 'no rod' }, ...under };
  const apart = sheltersOf(facts).filter((s) => bonding.groupOf.get(s) !== bonding.groupOf.get(id));
  if (apart.length > 0 && !isWhole(facts, 'conductors')) return cannotTell(at, 'tie unknown');
  if (apart.length > 0) return { is: 'not met', at, because: { key: 'apart', values: { shelters: apart } } };
  const own = conductors.filter((c) => c.ends.includes(id) || c.passes.includes(id));
  const answers = own.map((c) => (c.areaM2 === null ? 'unknown' : isAtLeast(c.areaM2, leastAreaM2 * printedShare)));
  if (own.length === 0 || answers.includes('yes')) return { is: 'met', at, because: { key: 'rod' } };
  return answers.includes('unknown') ? cannotTell(at, 'size unknown') : { is: 'not met', at, because: { key: 'thin' } };
}

/** A size as printed is met by a size as printed. */
const printedShare = 1 - 2e-3;

function cannotTell(at: readonly string[], key: 'rod unknown' | 'tie unknown' | 'size unknown'): Verdict {
  return { is: 'cannot tell', at, because: { key }, settle: { key: 'walk round' } };
}

function sheltersOf({ site }: Asked): readonly string[] {
  const parts = [...site.equipment, ...site.metalwork].filter((p) => p.present !== 'no' && shelters.test(p.kind));
  return parts.map((p) => p.id);
}
