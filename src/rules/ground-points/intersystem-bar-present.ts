import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Bar } from '../../site/site.ts';
import { adoptedYear } from '../code-sets/adopted-edition.ts';
import { asAnswer, bestCopper, copperSettles, isThickCopper } from '../copper-section.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { reachedThick } from '../reached-thick.ts';
import { rule, type Verdict } from '../rule.ts';

const leastTerminals = 3;
/** Least section of the tie, square metres (6 AWG as printed). */
const leastAreaM2 = 13.3e-6;
const since = 2008;

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'conductors' | 'site'>;

export const intersystemBarPresent = rule({
  id: 'intersystem-bar-present',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2008', clause: '250.94', provenance: 'second-hand' },
  since,
  limits: [
    { key: 'count', value: leastTerminals, sense: 'least', of: 'terminals' },
    { key: 'areaM2', value: leastAreaM2, sense: 'least', of: 'copper' },
  ],
  needs: ['header', 'sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    if (facts.bonding.service.is === 'none') return [{ is: 'not applicable', because: { key: 'no service' } }];
    const bars = facts.site.bars.filter((b) => b.kind === 'intersystem bonding termination' && b.present !== 'no');
    if (bars.length > 0) return bars.map((b) => ofBar(b, facts));
    return withoutBar(facts);
  },
});

/** A building that had its bonds in place before needs none: only an edition that the owner names can ask it. */
function withoutBar(facts: Asked): readonly Verdict[] {
  if (!isWhole(facts, 'bars')) return nothingThere(facts, 'bars');
  const year = adoptedYear(facts.header, 'NFPA 70');
  if (year === null || year < since) return [{ is: 'not applicable', because: { key: 'no edition' } }];
  return [{ is: 'not met', at: [], because: { key: 'none there' } }];
}

function ofBar(bar: Bar, facts: Asked): Verdict {
  const { id, terminals } = bar;
  const at = [id];
  const tie = tieOf(bar, facts);
  if (tie?.is === 'not met') return tie;
  if (terminals === null) return { is: 'cannot tell', at, because: { key: 'not counted' }, settle: { key: 'count' } };
  const measured = { key: 'count', value: terminals, limit: leastTerminals, sense: 'least' } as const;
  if (terminals < leastTerminals) return { is: 'not met', at, because: { key: 'few' }, measured };
  return tie ?? { is: 'met', at, because: { key: 'enough' }, measured };
}

/** What is wrong or open with the way from the bar to the service; null: it is thick enough, or the bar is fixed to it. */
function tieOf(bar: Bar, facts: Asked): Verdict | null {
  const { id } = bar;
  const at = [id];
  const unknown = { is: 'cannot tell', at, because: { key: 'tie unknown' }, settle: { key: 'trace' } } as const;
  if (bar.present === 'unknown') return unknown;
  if (isMounted(bar, facts.site)) return null;
  const { service, serviceBy, openEnds, groupOf } = facts.bonding;
  const ties = facts.conductors.filter((c) => c.ends.includes(id) || c.passes.includes(id));
  if (ties.length === 0) return unknown;
  const best = bestCopper(ties, leastAreaM2);
  if (service.part !== null && !serviceBy.bonds.has(id)) {
    const isOpen = serviceBy.perhaps.has(id) || openEnds.has(groupOf.get(id) ?? '') || !isWhole(facts, 'conductors');
    return isOpen ? unknown : { is: 'not met', at, because: { key: 'apart' } };
  }
  const thick = service.part === null ? asAnswer(best.is) : reachedThick(facts, id, new Set([service.part]), isThick);
  if (thick === 'yes') return null;
  if (thick === 'no') {
    const { measured } = best;
    return { is: 'not met', at, because: { key: 'thin' }, ...(best.is === 'thin' && measured ? { measured } : {}) };
  }
  const doubt = best.is === 'enough' || best.is === 'thin' ? 'size unknown' : best.is;
  const open = ties.filter((c) => isThick(c) === 'unknown').map((c) => c.id);
  return {
    is: 'cannot tell',
    at: open.length > 0 ? open : at,
    because: { key: doubt },
    settle: { key: copperSettles[doubt] },
  };
}

const isThick = (c: ConductorFacts) => isThickCopper(c, leastAreaM2);

/** Fixed to metal of the service itself. */
function isMounted({ on }: Bar, { equipment }: Asked['site']): boolean {
  const box = equipment.find((e) => e.id === on?.part);
  return box !== undefined && (box.kind === 'service panel' || box.kind === 'meter box');
}
