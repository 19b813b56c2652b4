import type { MastFacts } from '../../facts/facts.ts';
import type { Site } from '../../site/site.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { leadsOf } from './leads-of.ts';

/** A lattice tower has legs; another one where somebody counted them. A tube has one wall all round. */
const hasLegs = ({ kind, legs }: MastFacts['part']) => kind === 'lattice tower' || (legs ?? 1) > 1;
/** Legs of a tower whose legs nobody counted: the fewest that stand. */
const fewestLegs = 3;

export const towerLegConnections = rule({
  id: 'tower-leg-connections',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: {
    document: 'TIA-222-G; MIL-HDBK-419A',
    edition: null,
    clause: 'leads of a tower',
    provenance: 'second-hand',
  },
  limits: [{ key: 'count', value: fewestLegs, sense: 'least', of: 'leads, one for each leg' }],
  needs: ['header', 'sections', 'masts', 'site'],
  check(facts) {
    const towers = facts.masts.filter((m) => m.metal === 'yes' && hasLegs(m.part));
    if (towers.length === 0) return nothingThere(facts, 'supports');
    const verdicts = towers.flatMap((m) => ofTower(m, facts.site, isWhole(facts, 'conductors')));
    return verdicts.length > 0 ? verdicts : [{ is: 'not applicable', because: { key: 'no lead' } }];
  },
});

/** A tower without any lead is a finding of its own. */
function ofTower({ id, part }: MastFacts, site: Site, isWholeFile: boolean): readonly Verdict[] {
  const leads = leadsOf(id, site);
  if (leads.length === 0) return [];
  const at = [id];
  const least = part.legs ?? fewestLegs;
  const legs = new Set(leads.flatMap((l) => l.at.member ?? [])).size;
  const untold = leads.filter((l) => l.at.member === null).length;
  const measured = { key: 'count', value: legs, limit: least, sense: 'least' } as const;
  if (legs >= least) return [{ is: 'met', at, because: { key: 'each leg' }, measured }];
  if (legs + untold >= least)
    return [{ is: 'cannot tell', at, because: { key: 'which leg' }, settle: { key: 'look' } }];
  if (!isWholeFile) return [{ is: 'cannot tell', at, because: { key: 'perhaps more' }, settle: { key: 'look' } }];
  return [{ is: 'not met', at, because: { key: 'few' }, measured: { ...measured, value: legs + untold } }];
}
