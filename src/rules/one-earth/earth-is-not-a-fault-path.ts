import type { BoxFacts, Facts } from '../../facts/facts.ts';
import { once } from '../../units/once.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { reachedByCord } from '../reached-by-cord.ts';
import { rule, type Verdict } from '../rule.ts';
import { mayBeBack, panels, panelsOf } from './cut-off-panels.ts';

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
    const { roots, cutOff } = panelsOf(facts);
    if (fed.length + cutOff.length === 0) return nothingThere(facts, 'equipment');
    const ids = roots.map((b) => b.id);
    const groups = new Set(ids.map((id) => facts.bonding.groupOf.get(id)));
    const sure = reachedByCord(facts, ids, false);
    const perhaps = reachedByCord(facts, ids, true);
    const cuts = cutOff.map((panel) => cutOf(panel, cutOff, facts));
    const verdicts = [...cutOff, ...fed].flatMap((b) => {
      const isBack = sure.has(b.id) || groups.has(facts.bonding.groupOf.get(b.id) ?? '');
      const cut = isBack ? undefined : cuts.find((c) => c.holds(b.id));
      if (cut === undefined) return ofBox(b, facts, isBack, perhaps.has(b.id));
      return [behind(cut.panel, b, perhaps.has(b.id) || cut.mayBeBack(), facts)];
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

/** A panel that is cut off, with what a cord or a bond ties to it: the panel itself too. */
function cutOf(panel: BoxFacts, cutOff: readonly BoxFacts[], facts: Asked) {
  const { groupOf } = facts.bonding;
  const byCord = reachedByCord(facts, [panel.id], false);
  const group = groupOf.get(panel.id);
  return {
    panel,
    holds: (id: string) => id === panel.id || (group !== undefined && groupOf.get(id) === group) || byCord.has(id),
    mayBeBack: once(() => mayBeBack(panel, cutOff, facts)),
  };
}

/** Asked with or without an electrode there: soil that a residual-current device watches (TT) is for an electrician to judge. */
function behind(panel: BoxFacts, { id }: BoxFacts, mayBe: boolean, { bonding }: Asked): Verdict {
  const at = [id];
  const { bonds, perhaps } = bonding.earthBy;
  const values = { panel: panel.id };
  const under = id === panel.id ? {} : { under: `earth-is-not-a-fault-path:${panel.id}` };
  if (bonding.serviceBy.bonds.has(id)) return { is: 'met', at, because: { key: 'metal' } };
  const open = { because: { key: 'panel unknown', values }, settle: { key: 'open panel', values } };
  if (mayBe || bonding.serviceBy.perhaps.has(id)) return { is: 'cannot tell', at, ...open, ...under };
  const byEarth = { because: { key: 'earth of panel', values }, settle: { key: 'ask device', values } };
  if (bonds.has(panel.id) || perhaps.has(panel.id)) return { is: 'cannot tell', at, ...byEarth, ...under };
  return { is: 'not met', at, because: { key: 'panel cut off', values }, ...under };
}

/** Its mains line has a protective conductor, or may have one, and it ends where nobody typed a panel. */
function leadsElsewhere({ mains }: BoxFacts, { site }: Asked): boolean {
  return site.lines.some((l) => mains.includes(l.id) && l.present !== 'no' && l.protectiveConductor !== 'no');
}
