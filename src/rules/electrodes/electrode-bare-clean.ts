import type { ElectrodeFacts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const electrodeBareClean = rule({
  id: 'electrode-bare-clean',
  family: 'code',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: null, clause: '250.53(A)(1), 250.52', provenance: 'second-hand' },
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    // Bars in concrete have a condition of their own.
    const verdicts = electrodes.filter((e) => e.part.kind !== 'concrete-encased').flatMap(ofElectrode);
    return verdicts.length === 0 ? nothingThere({ sections }, 'electrodes') : verdicts;
  },
});

/** Bare unless somebody says otherwise or says that it is not known: of the rest nothing is asked. */
function ofElectrode({ id, part }: ElectrodeFacts): readonly Verdict[] {
  const at = [id];
  const isWire = part.kind === 'buried wire' || part.kind === 'radial' || part.kind === 'strap on rock';
  if (part.painted === 'yes') return [{ is: 'not met', at, because: { key: 'painted' } }];
  if (isWire && part.wire?.insulated === 'yes') return [{ is: 'not met', at, because: { key: 'covered wire' } }];
  if (part.painted === 'no') return [{ is: 'met', at, because: { key: 'bare' } }];
  if (part.typed.painted === undefined) return [];
  return [{ is: 'cannot tell', at, because: { key: 'not seen' }, settle: { key: 'look at it' } }];
}
