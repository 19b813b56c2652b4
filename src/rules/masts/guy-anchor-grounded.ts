import type { Conductor, Guy, Site } from '../../site/site.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const guyAnchorGrounded = rule({
  id: 'guy-anchor-grounded',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'TIA-222', edition: 'F, G', clause: 'protective grounding', provenance: 'second-hand' },
  needs: ['header', 'sections', 'site'],
  check(facts) {
    const guys = facts.site.supports.flatMap((s) => s.guys).filter((g) => g.metal !== 'none');
    if (guys.length === 0) return nothingThere(facts, 'supports');
    const whole = isWhole(facts, 'conductors');
    return guys.map((g): Verdict => {
      const at = [g.id];
      const clamped = clampedTo(g, facts.site);
      if (clamped.some((c) => c.condition !== 'open')) return { is: 'met', at, because: { key: 'electrode' } };
      if ((g.metal === null && clamped.length === 0) || !whole)
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
      return { is: 'not met', at, because: { key: 'no electrode' } };
    });
  },
});

/** A conductor meets the guy (at its anchor or above the turnbuckle), burned open or not: somebody held it for metal. */
function clampedTo(g: Guy, site: Site): readonly Conductor[] {
  return site.conductors.filter(
    (c) => c.present !== 'no' && [c.from, c.to, ...c.passes.map((p) => p.at)].some((p) => p.part === g.id),
  );
}
