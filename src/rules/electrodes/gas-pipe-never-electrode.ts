import type { ConductorFacts } from '../../facts/facts.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** What must not end on a gas pipe: leads of masts, antennas and arresters. A bond of the pipe to the service is another thing. */
const leads: readonly ConductorFacts['role'][] = ['mast lead', 'arrester lead', 'down conductor', 'electrode tie'];

export const gasPipeNeverElectrode = rule({
  id: 'gas-pipe-never-electrode',
  family: 'code',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'NFPA 70; IEC 60364-5-54', edition: null, clause: '250.52(B)(1); 542.2', provenance: 'memory' },
  needs: ['header', 'sections', 'site', 'conductors'],
  check(facts) {
    const { site, conductors } = facts;
    const pipes = site.metalwork.filter((m) => m.kind === 'gas pipe' && m.present !== 'no');
    if (pipes.length === 0) return nothingThere(facts, 'metalwork');
    return pipes.map((p): Verdict => {
      const used = conductors.filter((c) => leads.includes(c.role) && [...c.ends, ...c.passes].includes(p.id));
      const at = [p.id];
      if (used.length > 0)
        return { is: 'not met', at, because: { key: 'used', values: { by: used.map((c) => c.id) } } };
      if (!isWhole(facts, 'conductors'))
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
      return { is: 'met', at, because: { key: 'not used' } };
    });
  },
});
