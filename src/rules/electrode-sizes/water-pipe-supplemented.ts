import type { ElectrodeFacts, Facts } from '../../facts/facts.ts';
import { addRod } from '../changes/add-rod.ts';
import { isListedElectrode } from '../electrodes/listed-electrode.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const waterPipeSupplemented = rule({
  id: 'water-pipe-supplemented',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.53(D)(2)', provenance: 'second-hand' },
  needs: ['header', 'isAmerican', 'sections', 'electrodes', 'bonding', 'site'],
  check(facts) {
    const pipes = facts.electrodes.filter((e) => e.part.kind === 'water pipe');
    return pipes.length === 0 ? nothingThere(facts, 'electrodes') : pipes.map((e) => ofPipe(e, facts));
  },
});

/** Another pipe of water is no supplement: it is lost the same way. */
function ofPipe(
  e: ElectrodeFacts,
  facts: Pick<Facts, 'header' | 'isAmerican' | 'sections' | 'electrodes' | 'bonding' | 'site'>,
): Verdict {
  const at = [e.id];
  const others = facts.electrodes.filter((o) => o.part.kind !== 'water pipe' && isListedElectrode(o.part) !== 'no');
  const isBeside = (o: ElectrodeFacts) => o.group !== null && o.group === e.group;
  if (others.some((o) => o.part.present === 'yes' && isBeside(o) && isListedElectrode(o.part) === 'yes'))
    return { is: 'met', at, because: { key: 'another' } };
  const { perhapsUnbonded, perhapsJoined } = facts.bonding;
  const mayJoin = perhapsUnbonded.some((p) => p.electrode === e.id) || (e.group !== null && perhapsJoined.has(e.group));
  const mayBe = others.some((o) => o.part.present === 'unknown' || (o.part.present === 'yes' && isBeside(o)));
  if (mayJoin || mayBe || !isWhole(facts, 'electrodes') || !isWhole(facts, 'conductors')) {
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
  }
  return { is: 'not met', at, because: { key: 'alone' }, change: addRod(facts, e.id) };
}
