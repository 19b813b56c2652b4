import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Bar } from '../../site/site.ts';
import { isAtLeast } from '../../units/interval.ts';
import { adoptedYear } from '../code-sets/adopted-edition.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
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

function ofBar(bar: Bar, { conductors, site }: Asked): Verdict {
  const { id, terminals } = bar;
  const at = [id];
  const ties = conductors.filter((c) => c.ends.includes(id)).map((c) => ({ c, is: enough(c) }));
  const isTied = isMounted(bar, site) || ties.some((t) => t.is === 'yes');
  const isThin = !isTied && ties.length > 0 && ties.every((t) => t.is === 'no');
  if (isThin) {
    const value = ties[0]!.c.areaM2!;
    const measured = { key: 'areaM2', value, limit: leastAreaM2, sense: 'least' } as const;
    return { is: 'not met', at, because: { key: 'thin' }, measured };
  }
  if (terminals === null) return { is: 'cannot tell', at, because: { key: 'not counted' }, settle: { key: 'count' } };
  const measured = { key: 'count', value: terminals, limit: leastTerminals, sense: 'least' } as const;
  if (terminals < leastTerminals) return { is: 'not met', at, because: { key: 'few' }, measured };
  if (isTied) return { is: 'met', at, because: { key: 'enough' }, measured };
  if (ties.length === 0) return { is: 'cannot tell', at, because: { key: 'tie unknown' }, settle: { key: 'trace' } };
  const open = ties.filter((t) => t.is === 'unknown').map((t) => t.c.id);
  return { is: 'cannot tell', at: open, because: { key: 'size unknown' }, settle: { key: 'measure it' } };
}

const enough = ({ areaM2 }: ConductorFacts) =>
  areaM2 === null ? 'unknown' : isAtLeast(areaM2, leastAreaM2 * printedShare);

/** Fixed to metal of the service itself. */
function isMounted({ on }: Bar, { equipment }: Asked['site']): boolean {
  const box = equipment.find((e) => e.id === on?.part);
  return box !== undefined && (box.kind === 'service panel' || box.kind === 'meter box');
}

/** A size as printed is met by a size as printed. */
const printedShare = 1 - 2e-3;
