import type { Facts } from '../../facts/facts.ts';
import { claimsOf } from '../claims.ts';
import { isWhole } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Wide enough that a claimed lightning protection counts them as what is struck; slender masts and poles are exempt. */
const wide: readonly string[] = ['tower', 'lattice tower', 'crank-up tower', 'water tank'];

export const twoPathsFromStrikePoint = rule({
  id: 'two-paths-from-strike-point',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: {
    document: 'MIL-HDBK-419A; NFPA 780',
    edition: 'vol. II',
    clause: 'grounding conductors',
    provenance: 'read',
  },
  needs: ['header', 'sections', 'bonding', 'site'],
  check(facts) {
    const { lightning } = claimsOf(facts.header);
    const there = facts.site.supports.filter((s) => s.present !== 'no');
    const struck = there.filter((s) => s.kind === 'air terminal' || (lightning && wide.includes(s.kind)));
    if (struck.length === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
    return struck.map((s) => ofTerminal(s.id, facts));
  },
});

/** No single conductor or joint takes it off earth: then two ways share neither. */
function ofTerminal(id: string, facts: Pick<Facts, 'header' | 'sections' | 'bonding'>): Verdict {
  const at = [id];
  const { earthBy, weakPoints } = facts.bonding;
  if (!earthBy.bonds.has(id) && (earthBy.perhaps.has(id) || !isWhole(facts, 'conductors')))
    return { is: 'cannot tell', at, because: { key: 'not typed' }, settle: { key: 'follow' } };
  if (!earthBy.bonds.has(id)) return { is: 'not met', at, because: { key: 'no way' } };
  const single = weakPoints.filter((w) => w.kind !== 'part' && w.losesEarth.includes(id));
  if (single.length === 0) return { is: 'met', at, because: { key: 'two ways' } };
  if (!isWhole(facts, 'conductors') || !single.some((w) => w.certain))
    return { is: 'cannot tell', at, because: { key: 'not typed' }, settle: { key: 'follow' } };
  return { is: 'not met', at, because: { key: 'one way' } };
}
