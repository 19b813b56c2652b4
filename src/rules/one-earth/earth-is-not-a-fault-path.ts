import type { BoxFacts, Facts } from '../../facts/facts.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { reachedByCord } from '../reached-by-cord.ts';
import { rule, type Verdict } from '../rule.ts';

/** Boxes on which a supply begins or is shared out: their bonds are asked elsewhere. */
const panels: readonly string[] = ['service panel', 'meter box', 'sub-panel', 'generator'];

type Asked = Pick<Facts, 'header' | 'bonding' | 'boxes' | 'sections' | 'site'>;

export const earthIsNotAFaultPath = rule({
  id: 'earth-is-not-a-fault-path',
  family: 'code',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: null, clause: '250.4(A)(5), 250.54', provenance: 'second-hand' },
  needs: ['header', 'sections', 'bonding', 'boxes', 'site'],
  check(facts) {
    const fed = facts.boxes.filter((b) => b.mains.length > 0 && !panels.includes(b.part.kind));
    if (fed.length === 0) return nothingThere(facts, 'equipment');
    const roots = facts.boxes.filter((b) => panels.includes(b.part.kind)).map((b) => b.id);
    const groups = new Set(roots.map((id) => facts.bonding.groupOf.get(id)));
    const sure = reachedByCord(facts, roots, false);
    const perhaps = reachedByCord(facts, roots, true);
    const verdicts = fed.flatMap((b) => {
      const isBack = sure.has(b.id) || groups.has(facts.bonding.groupOf.get(b.id) ?? '');
      return ofBox(b, facts, isBack, perhaps.has(b.id));
    });
    return verdicts.length > 0 ? verdicts : [{ is: 'not applicable', because: { key: 'no electrode' } }];
  },
});

/** Asked where a box reaches an electrode and metal may not bring it back to a panel: then soil is what is left. */
function ofBox(box: BoxFacts, facts: Asked, isBack: boolean, perhapsByCord: boolean): readonly Verdict[] {
  const { id } = box;
  const { bonding } = facts;
  const at = [id];
  if (isBack || bonding.serviceBy.bonds.has(id)) return [{ is: 'met', at, because: { key: 'metal' } }];
  if (!bonding.earthBy.bonds.has(id)) return [];
  const isOpen = perhapsByCord || bonding.serviceBy.perhaps.has(id) || bonding.service.is === 'unknown';
  if (isOpen || leadsElsewhere(box, facts) || !isWhole(facts, 'conductors'))
    return [{ is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } }];
  return [{ is: 'not met', at, because: { key: 'soil alone' } }];
}

/** Its mains line has a protective conductor, or may have one, and it ends where nobody typed a panel. */
function leadsElsewhere({ mains }: BoxFacts, { site }: Asked): boolean {
  return site.lines.some((l) => mains.includes(l.id) && l.present !== 'no' && l.protectiveConductor !== 'no');
}
