import type { Bonding } from '../../bonding/bonding.ts';
import type { Facts } from '../../facts/facts.ts';
import { sayField, sayToType } from '../../words/field-words.ts';
import { addBond } from '../changes/add-bond.ts';
import { type IsolatedGroup, isolatedGroups } from '../isolated-groups.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { leadingFinding, underLeading } from './leading-finding.ts';
import { ownSupplyOf, twoSupplies } from './own-supply.ts';

export const allElectrodesOneSystem = rule({
  id: 'all-electrodes-one-system',
  family: 'code',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: '2020', clause: '250.50, 250.58', provenance: 'second-hand' },
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'electrodes', 'site'],
  check(facts) {
    const { bonding, electrodes } = facts;
    if (bonding.service.is === 'none') return [{ is: 'not applicable', because: { key: 'field station' } }];
    const own = electrodes.filter((e) => e.part.owner !== 'utility').map((e) => e.id);
    if (own.length === 0) return nothingThere(facts, 'electrodes');
    const isolated = isolatedGroups(bonding, (id) => own.some((e) => e === id || id.startsWith(`${e}.`)));
    const apart = new Set(isolated.flatMap((g) => g.electrodes));
    const doubt = new Set(bonding.perhapsUnbonded.map((p) => p.electrode));
    const rest = own.filter((e) => !apart.has(e) && !doubt.has(e) && !isolated.some((g) => g.parts.has(e)));
    return [
      ...placesOf(isolated, bonding).map((at): Verdict => apartOf(at, facts, isolated)),
      ...bonding.perhapsUnbonded.filter((p) => own.includes(p.electrode)).map(doubtOf),
      ...rest.map((e) => ofMain(e, bonding)),
    ];
  },
});

/** Each group by itself; with the service unknown all in one, since nobody knows which of them holds it. */
function placesOf(isolated: readonly IsolatedGroup[], { service }: Bonding): readonly (readonly string[])[] {
  if (service.is === 'known' || isolated.length === 0) return isolated.map((g) => g.electrodes);
  return [isolated.flatMap((g) => g.electrodes).sort()];
}

function apartOf(
  electrodes: readonly string[],
  facts: Pick<Facts, 'header' | 'isAmerican' | 'sections' | 'bonding' | 'site'>,
  isolated: readonly IsolatedGroup[],
): Verdict {
  const groups = isolated.filter((g) => g.electrodes.every((e) => electrodes.includes(e)));
  const own = groups.length === 1 ? ownSupplyOf(groups[0]!.id, facts) : null;
  if (own !== null) return twoSupplies(electrodes, own);
  if (!isWhole(facts, 'conductors')) {
    return { is: 'cannot tell', at: electrodes, because: { key: 'conductors not whole' }, settle: { key: 'trace' } };
  }
  const key = facts.bonding.service.is === 'unknown' ? 'apart from the others' : 'apart';
  const leading = leadingFinding(facts, electrodes);
  const { bonding } = facts;
  return {
    is: 'not met',
    at: electrodes,
    because: { key },
    untied: electrodes,
    ...underLeading('all-electrodes-one-system', leading),
    ...addBond(facts, electrodes[0]!, bonding.service.part),
  };
}

function doubtOf(p: { readonly electrode: string; readonly decidedBy: readonly string[] }): Verdict {
  return {
    is: 'cannot tell',
    at: [p.electrode],
    because: { key: 'decided by', values: { decidedBy: p.decidedBy.map(sayField).join('; ') } },
    settle: { key: 'look', values: { decidedBy: p.decidedBy.map(sayToType).join('; ') } },
  };
}

function ofMain(electrode: string, bonding: Bonding): Verdict {
  if (bonding.service.is === 'known') return { is: 'met', at: [electrode], because: { key: 'in the system' } };
  return { is: 'cannot tell', at: [electrode], because: { key: 'service unknown' }, settle: { key: 'find service' } };
}
