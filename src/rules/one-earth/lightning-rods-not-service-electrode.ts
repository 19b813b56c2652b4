import { purposesOf } from '../electrodes/purposes-of.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';

export const lightningRodsNotServiceElectrode = rule({
  id: 'lightning-rods-not-service-electrode',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '1999', clause: '250.60', provenance: 'read' },
  needs: ['header', 'sections', 'bonding', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const { bonding, electrodes } = facts;
    const ofLightning = electrodes.filter((e) => purposesOf(e.part, facts).has('lightning'));
    const group = bonding.groups.find((g) => g.hasService === true);
    if (ofLightning.length === 0 || group === undefined) return nothingThere(facts, 'electrodes');
    const inGroup = electrodes.filter((e) => e.group === group.id && e.part.owner !== 'utility');
    const others = inGroup.filter((e) => !ofLightning.includes(e));
    const at = inGroup.map((e) => e.id).sort();
    if (others.some((e) => e.part.present === 'yes')) return [{ is: 'met', at, because: { key: 'has its own' } }];
    const mayBe = others.length > 0 || bonding.perhapsJoined.has(group.id) || bonding.openEnds.has(group.id);
    if (mayBe || !isWhole(facts, 'electrodes') || !isWhole(facts, 'conductors'))
      return [{ is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } }];
    return inGroup.length === 0
      ? nothingThere(facts, 'electrodes')
      : [{ is: 'not met', at, because: { key: 'no other' } }];
  },
});
