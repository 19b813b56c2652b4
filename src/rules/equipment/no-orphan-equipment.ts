import type { BoxFacts, Facts } from '../../facts/facts.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Boxes too small or too plastic to ask a bond of. */
const exempt: readonly string[] = ['modem', 'router', 'computer'];

export const noOrphanEquipment = rule({
  id: 'no-orphan-equipment',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: {
    document: 'IEEE Std 1100; ITU-T K.27',
    edition: null,
    clause: 'bonding of equipment',
    provenance: 'memory',
  },
  needs: ['header', 'sections', 'bonding', 'boxes'],
  check(facts) {
    const boxes = facts.boxes.filter((b) => !exempt.includes(b.part.kind) && b.part.present !== 'no');
    if (boxes.length === 0) return nothingThere(facts, 'equipment');
    return boxes.map((b) => ofBox(b, facts));
  },
});

function ofBox(b: BoxFacts, facts: Pick<Facts, 'header' | 'sections' | 'bonding'>): Verdict {
  const at = [b.id];
  const { earthBy, serviceBy } = facts.bonding;
  if (earthBy.bonds.has(b.id)) return { is: 'met', at, because: { key: 'bonded' } };
  if (serviceBy.bondsAndCords.has(b.id)) return { is: 'met', at, because: { key: 'by its cord' } };
  if (b.part.bonded === 'no' && !earthBy.perhaps.has(b.id)) return { is: 'not met', at, because: { key: 'nothing' } };
  const whole = isWhole(facts, 'conductors') && isWhole(facts, 'lines');
  if (earthBy.perhaps.has(b.id) || b.id === facts.bonding.service.part || !whole || b.part.bonded === 'unknown') {
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
  }
  return { is: 'not met', at, because: { key: 'nothing' } };
}
