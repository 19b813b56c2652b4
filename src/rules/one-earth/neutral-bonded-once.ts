import type { Facts } from '../../facts/facts.ts';
import type { Equipment, Site } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { neighbours, reachedFrom } from '../neighbours.ts';
import { rule, type Verdict } from '../rule.ts';
import { mayBondAgain } from './may-bond-again.ts';

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'boxes' | 'site'>;

export const neutralBondedOnce = rule({
  id: 'neutral-bonded-once',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us', 'ca'],
  source: { document: 'NFPA 70', edition: null, clause: '250.24, 250.142', provenance: 'read' },
  needs: ['header', 'sections', 'bonding', 'boxes', 'site'],
  check(facts) {
    const { site } = facts;
    const boxes = site.equipment.filter((e) => e.present !== 'no');
    const services = boxes.filter((e) => e.kind === 'service panel');
    const panels = boxes.filter((e) => e.kind === 'sub-panel' || isBondedBeyond(e, site.header.service));
    const bonded = services.filter((e) => e.neutralBonded === 'yes');
    const home = bonded.find((e) => e.id === site.header.service) ?? bonded[0];
    const verdicts = [
      ...panels.map((e) => ofSubPanel(e, facts)),
      ...bonded
        .filter((e) => e !== home)
        .map((e): Verdict => ({ is: 'not met', at: [e.id], because: { key: 'bonded again' } })),
      ...ofNone(boxes, site.header.service),
      ...(home === undefined ? [] : ofSources(home, site)),
    ];
    return verdicts.length === 0 ? nothingThere(facts, 'equipment') : verdicts;
  },
});

/** Somebody looked in the service panel and found no bond: then it has to be on the supply side of it. */
function ofNone(boxes: readonly Equipment[], service: string): readonly Verdict[] {
  const home = boxes.find((e) => e.id === service && e.kind === 'service panel' && e.neutralBonded === 'no');
  if (home === undefined) return [];
  const before = boxes.filter((e) => e !== home && maySupply.test(e.kind));
  if (before.some((e) => e.neutralBonded === 'yes')) return [];
  const at = [home.id];
  if (before.length > 0 && before.every((e) => e.neutralBonded === 'no'))
    return [{ is: 'not met', at, because: { key: 'nowhere' } }];
  return [{ is: 'cannot tell', at, because: { key: 'not at the service' }, settle: { key: 'open the meter box' } }];
}

/**
 * A source that feeds the panel: where its neutral is bonded too, all hangs on whether the transfer switch takes the neutral
 * over. One that no line joins to the panel (a portable set for a field station) has a bond of its own.
 */
function ofSources(home: Equipment, { equipment, lines }: Site): readonly Verdict[] {
  const mains = lines.filter((l) => l.kind === 'mains' && l.present !== 'no');
  const pairs = mains.flatMap((l) => {
    const parts = l.path.flatMap((s) => (s.is === 'part' && s.at.part !== null ? [s.at.part] : []));
    return parts.slice(1).map((part, i) => [parts[i]!, part] as const);
  });
  const fed = reachedFrom([home.id], neighbours(pairs));
  return equipment
    .filter((e) => /generator|inverter/i.test(e.kind) && e.present !== 'no' && fed.has(e.id))
    .map(ofSource);
}

function ofSource({ id, neutralBonded, neutralSwitched }: Equipment): Verdict {
  const at = [id];
  if (neutralBonded === 'unknown' || neutralSwitched === 'unknown')
    return {
      is: 'cannot tell',
      at,
      because: { key: 'perhaps at the source too' },
      settle: { key: 'look at the switch' },
    };
  if (neutralBonded === neutralSwitched) return { is: 'met', at, because: { key: 'one at a time' } };
  if (neutralBonded === 'yes') return { is: 'not met', at, because: { key: 'bonded at the source too' } };
  return { is: 'not met', at, because: { key: 'nowhere while it runs' } };
}

/** Where a neutral may be bonded: at the service and on its supply side, and at a source of its own. */
const maySupply = /service panel|meter|generator|transformer|inverter/i;

/** A box under a name of its owner's, with a neutral bond, that is neither the service nor a source. */
function isBondedBeyond(e: Equipment, service: string): boolean {
  return e.neutralBonded === 'yes' && e.id !== service && !maySupply.test(e.kind);
}

function ofSubPanel({ id, neutralBonded }: Equipment, facts: Asked): Verdict {
  const at = [id];
  if (neutralBonded === 'no') return { is: 'met', at, because: { key: 'kept apart' } };
  if (neutralBonded !== 'yes')
    return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'open it' } };
  if (mayBondAgain(id, facts))
    return { is: 'cannot tell', at, because: { key: 'perhaps accepted' }, settle: { key: 'ask' } };
  return { is: 'not met', at, because: { key: 'bonded again' } };
}
