import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { isAtMost } from '../../units/interval.ts';
import { mostAsPrinted } from '../as-printed.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** 16 ft, 4.9 m. */
const mostM = 4.8768;
/** Supports slender enough that one path is accepted. */
const slender: readonly string[] = ['mast', 'roof mast', 'tilt-over mast', 'wood pole', 'building face', 'tree'];

export const deadEndLength = rule({
  id: 'dead-end-length',
  family: 'practice',
  severity: 'defect',
  codeSets: ['us'],
  source: {
    document: 'MIL-HDBK-419A; NFPA 780',
    edition: 'vol. II',
    clause: 'down conductors; 4.9',
    provenance: 'read',
  },
  limits: [{ key: 'runLengthM', value: mostM, sense: 'most' }],
  needs: ['header', 'sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const { conductors, site } = facts;
    const towers = new Set(site.supports.filter((s) => !slender.includes(s.kind)).map((s) => s.id));
    const ends = conductors.filter((c) => c.lightningPath && c.ends.some((id) => id !== null && towers.has(id)));
    if (ends.length === 0) return nothingThere(facts, 'conductors');
    return ends.map((c) => ofEnd(c, facts));
  },
});

function ofEnd(c: ConductorFacts, facts: Pick<Facts, 'header' | 'sections' | 'bonding'>): Verdict {
  const at = [c.id];
  if (!c.deadEnd) return { is: 'met', at, because: { key: 'second way' } };
  if (c.lengthM === null)
    return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' } };
  const measured = { key: 'runLengthM', value: c.lengthM, limit: mostM, sense: 'most' } as const;
  const short = isAtMost(c.lengthM, mostAsPrinted(mostM, 4.9));
  if (short === 'yes') return { is: 'met', at, because: { key: 'short' }, measured };
  // a second way that is not known to be there, or that nobody typed
  const isOnly = facts.bonding.weakPoints.some((w) => w.at === c.id && w.certain && w.losesEarth.length > 0);
  if (!isOnly || !isWhole(facts, 'conductors'))
    return { is: 'cannot tell', at, because: { key: 'perhaps second' }, settle: { key: 'trace' } };
  if (short === 'no') return { is: 'not met', at, because: { key: 'long' }, measured };
  return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' }, measured };
}
