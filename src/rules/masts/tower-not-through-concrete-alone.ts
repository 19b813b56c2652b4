import type { Facts } from '../../facts/facts.ts';
import type { Answer } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
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
  needs: ['header', 'sections', 'bonding', 'masts', 'site'],
  check(facts) {
    const masts = facts.masts.filter((m) => m.metal !== 'no' && standing.includes(m.part.kind));
    if (masts.length === 0) return nothingThere(facts, 'supports');
    const verdicts = masts.flatMap((m) => ofMast(m.id, facts));
    return verdicts.length > 0 ? verdicts : [{ is: 'not applicable', because: { key: 'no lead' } }];
  },
});

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'site'>;

/** By what its leads end on, at once or by a bar. */
function ofMast(mast: string, facts: Asked): readonly Verdict[] {
  const { electrodes } = facts.site;
  const ends = leadsOf(mast, facts.site).flatMap((l) => l.others.map((o) => o.part));
  if (ends.length === 0) return [];
  const concrete = new Set(electrodes.filter((e) => e.kind === 'concrete-encased').map((e) => e.id));
  const others = ends.filter((id) => id !== null && !concrete.has(id));
  const beside = others.map((id) => leadsOn(id!, concrete, facts));
  if (beside.includes('yes')) return [{ is: 'met', at: [mast], because: { key: 'beside' } }];
  const reached = ends.flatMap((id) => (id === null ? [] : concrete.has(id) ? [id] : electrodesBy(id, facts)));
  if (beside.includes('unknown') || (reached.length === 0 && ends.includes(null)))
    return [{ is: 'cannot tell', at: [mast], because: { key: 'end unknown' }, settle: { key: 'trace' } }];
  if (reached.length === 0) return [];
  const between = apart(facts.site);
  return [
    ofBlocks(
      mast,
      reached.map((b) => between(mast, b)),
      ends.includes(null),
    ),
  ];
}

/** Whether a part that is no footing leads to an electrode that is none, or to the service. */
function leadsOn(id: string, concrete: ReadonlySet<string>, facts: Asked): Answer {
  if (electrodesBy(id, facts).some((e) => !concrete.has(e))) return 'yes';
  const { groups, groupOf, openEnds, perhapsJoined, service } = facts.bonding;
  const group = groups.find((g) => g.id === groupOf.get(id));
  if (group?.hasService === true) return 'yes';
  const mayGoOn = group !== undefined && (openEnds.has(group.id) || perhapsJoined.has(group.id));
  return mayGoOn || service.is === 'unknown' || !isWhole(facts, 'conductors') ? 'unknown' : 'no';
}

function electrodesBy(id: string, { bonding }: Asked): readonly string[] {
  return bonding.groups.find((g) => g.id === bonding.groupOf.get(id))?.electrodes ?? [];
}

/** A footing far off is no block of the mast: its wire goes through soil or air. */
function ofBlocks(mast: string, distances: readonly (Interval | null)[], orUntraced: boolean): Verdict {
  const at = [mast];
  if (distances.some((d) => d !== null && d.low > blockM)) return { is: 'met', at, because: { key: 'beside' } };
  const isOwn = distances.every((d) => d !== null && d.high <= blockM);
  if (isOwn && !orUntraced) return { is: 'not met', at, because: { key: 'concrete alone' } };
  return { is: 'cannot tell', at, because: { key: 'whose block' }, settle: { key: 'trace' } };
}
