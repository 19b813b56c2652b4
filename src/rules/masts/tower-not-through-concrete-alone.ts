import type { Interval } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { leadsOf } from './leads-of.ts';

/** Stand on the ground, in a block of their own. */
const standing: readonly string[] = ['tower', 'lattice tower', 'mast', 'crank-up tower', 'tilt-over mast'];
/** Concrete within this distance of the foot is the mast’s own block, metres. Ours. */
const blockM = 3;

export const towerNotThroughConcreteAlone = rule({
  id: 'tower-not-through-concrete-alone',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: {
    document: 'field experience; opinions differ',
    edition: null,
    clause: null,
    provenance: 'second-hand',
  },
  needs: ['sections', 'masts', 'site'],
  check(facts) {
    const masts = facts.masts.filter((m) => m.metal !== 'no' && standing.includes(m.part.kind));
    if (masts.length === 0) return nothingThere(facts, 'supports');
    const inConcrete = new Set(facts.site.electrodes.filter((e) => e.kind === 'concrete-encased').map((e) => e.id));
    const between = apart(facts.site);
    const verdicts = masts.flatMap((m): readonly Verdict[] => {
      const ends = leadsOf(m.id, facts.site).flatMap((l) => l.others.map((o) => o.part));
      if (ends.length === 0) return [];
      const blocks = ends.flatMap((id) => (id !== null && inConcrete.has(id) ? [id] : []));
      const isElsewhere = ends.some((id) => id !== null && !inConcrete.has(id));
      if (isElsewhere) return [{ is: 'met', at: [m.id], because: { key: 'beside' } }];
      if (blocks.length === 0)
        return [{ is: 'cannot tell', at: [m.id], because: { key: 'end unknown' }, settle: { key: 'trace' } }];
      return [
        ofBlocks(
          m.id,
          blocks.map((b) => between(m.id, b)),
          ends.length > blocks.length,
        ),
      ];
    });
    return verdicts.length > 0 ? verdicts : [{ is: 'not applicable', because: { key: 'no lead' } }];
  },
});

/** A footing far off is no block of the mast: its wire goes through soil or air. */
function ofBlocks(mast: string, distances: readonly (Interval | null)[], orUntraced: boolean): Verdict {
  const at = [mast];
  if (distances.some((d) => d !== null && d.low > blockM)) return { is: 'met', at, because: { key: 'beside' } };
  const isOwn = distances.every((d) => d !== null && d.high <= blockM);
  if (isOwn && !orUntraced) return { is: 'not met', at, because: { key: 'concrete alone' } };
  return { is: 'cannot tell', at, because: { key: 'whose block' }, settle: { key: 'trace' } };
}
