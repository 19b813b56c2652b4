import type { ElectrodeFacts } from '../../facts/facts.ts';
import { underLength } from '../electrode-sizes/under-length.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const aluminiumNeverElectrode = rule({
  id: 'aluminium-never-electrode',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.52(B)(2)', provenance: 'memory' },
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    const said = electrodes.filter((e) => metalOf(e) !== null || e.part.typed.metal !== undefined);
    if (said.length === 0) return nothingThere({ sections }, 'electrodes');
    return underLength(said.map(ofElectrode), said);
  },
});

const metalOf = ({ part }: ElectrodeFacts): string | null => (part.metal ?? part.wire?.metal)?.name ?? null;

function ofElectrode(e: ElectrodeFacts): Verdict {
  const at = [e.id];
  const metal = metalOf(e);
  if (metal === null)
    return { is: 'cannot tell', at, because: { key: 'metal unknown' }, settle: { key: 'look at it' } };
  return /aluminium/.test(metal)
    ? { is: 'not met', at, because: { key: 'aluminium' } }
    : { is: 'met', at, because: { key: 'other metal' } };
}
