import type { ConductorFacts, Facts, MastFacts } from '../../facts/facts.ts';
import type { Answer } from '../../site/site.ts';
import { bestCopper, copperSettles, isThickCopper } from '../copper-section.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { reachedThick } from '../reached-thick.ts';
import { rule, type Verdict } from '../rule.ts';
import { isShelter } from '../shelter-kinds.ts';

/** Least section of the conductor at a field mast, square metres (6 AWG as printed). */
const leastAreaM2 = 13.3e-6;
const noMast: readonly string[] = ['building face', 'tree', 'wood pole'];

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
    if (facts.header.temporary === 'no') return [{ is: 'not applicable', because: { key: 'not temporary' } }];
    const masts = facts.masts.filter((m) => m.metal === 'yes' && !noMast.includes(m.part.kind));
    if (masts.length === 0) return nothingThere(facts, 'supports');
    return masts.map((m) => ifTemporary(ofMast(m, facts), facts.header.temporary));
  },
});

/** Of a station of which nobody knows whether it stays, what is not met cannot be told. */
function ifTemporary(v: Verdict, temporary: Answer): Verdict {
  if (temporary === 'yes' || v.is !== 'not met') return v;
  return { is: 'cannot tell', at: v.at, because: { key: 'perhaps temporary' }, settle: { key: 'say it' } };
}

/** A mast on no electrode is a finding of the code where one asks it; this one goes under it. */
function ofMast({ id }: MastFacts, facts: Asked): Verdict {
  const at = [id];
  const { bonding } = facts;
  const under = {
    under: ['iec', 'uk'].includes(facts.header.region) ? `iec-mast-earthed:${id}` : `mast-grounded:${id}`,
  };
  const isOpen = bonding.earthBy.perhaps.has(id) || !isWhole(facts, 'conductors');
  if (!bonding.earthBy.bonds.has(id))
    return isOpen ? cannotTell(at, 'rod unknown') : { is: 'not met', at, because: { key: 'no rod' }, ...under };
  const apart = sheltersOf(facts).filter((s) => bonding.groupOf.get(s) !== bonding.groupOf.get(id));
  if (apart.length > 0 && !isWhole(facts, 'conductors')) return cannotTell(at, 'tie unknown');
  if (apart.length > 0) return { is: 'not met', at, because: { key: 'apart', values: { shelters: apart } } };
  return bySize(id, facts);
}

/** The way to an electrode, by its thinnest conductor. */
function bySize(id: string, facts: Asked): Verdict {
  const at = [id];
  const rods = new Set(facts.site.electrodes.filter((e) => e.present !== 'no').map((e) => e.id));
  const thick = reachedThick(facts, id, rods, isThick);
  const own = facts.conductors.filter((c) => c.ends.includes(id) || c.passes.includes(id));
  const { is, ...figure } = bestCopper(own, leastAreaM2);
  if (thick === 'yes') return { is: 'met', at, because: { key: 'rod' }, ...(is === 'enough' ? figure : {}) };
  if (thick === 'no') return { is: 'not met', at, because: { key: 'thin' }, ...(is === 'thin' ? figure : {}) };
  const doubt = is === 'enough' || is === 'thin' ? 'size unknown' : is;
  return { is: 'cannot tell', at, because: { key: doubt }, settle: { key: copperSettles[doubt] } };
}

const isThick = (c: ConductorFacts) => isThickCopper(c, leastAreaM2);

function cannotTell(at: readonly string[], key: 'rod unknown' | 'tie unknown'): Verdict {
  return { is: 'cannot tell', at, because: { key }, settle: { key: 'walk round' } };
}

function sheltersOf({ site }: Asked): readonly string[] {
  const parts = [...site.equipment, ...site.metalwork].filter((p) => p.present !== 'no' && isShelter(p.kind));
  return parts.map((p) => p.id);
}
