import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Answer, Equipment } from '../../site/site.ts';
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
  needs: ['header', 'sections', 'site', 'conductors', 'bonding'],
  check(facts) {
    const { site, conductors } = facts;
    const pipes = site.metalwork.filter((m) => m.kind === 'gas pipe' && m.present !== 'no');
    if (pipes.length === 0) return nothingThere(facts, 'metalwork');
    return pipes.map((p): Verdict => {
      const landing = conductors.filter((c) => [...c.ends, ...c.passes].includes(p.id));
      const lone = new Map(landing.map((c) => [c.id, hangsOn(p.id, c, facts)]));
      const used = landing.filter((c) => leads.includes(c.role) || lone.get(c.id) === 'yes');
      const at = [p.id];
      if (used.length > 0)
        return { is: 'not met', at, because: { key: 'used', values: { by: used.map((c) => c.id) } } };
      const open = landing.filter((c) => lone.get(c.id) === 'unknown').map((c) => c.id);
      if (open.length > 0)
        return { is: 'cannot tell', at, because: { key: 'other way', values: { by: open } }, settle: { key: 'trace' } };
      if (!isWhole(facts, 'conductors'))
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
      return { is: 'met', at, because: { key: 'not used' } };
    });
  },
});

type Asked = Pick<Facts, 'header' | 'sections' | 'site' | 'conductors' | 'bonding'>;

/** Whether a bar, arrester or radio has no other way to earth than the pipe that this conductor leads to. */
function hangsOn(pipe: string, c: ConductorFacts, facts: Asked): Answer {
  const { site, bonding } = facts;
  const own = new Set([...site.bars, ...site.arresters, ...site.equipment.filter(isRadio)].map((p) => p.id));
  const others = [...c.ends, ...c.passes].filter((id) => id !== null && id !== pipe && own.has(id)) as string[];
  const bare = others.filter((id) => !bonding.earthBy.bonds.has(id));
  if (bare.length === 0) return 'no';
  const isAll = isWhole(facts, 'conductors') && isWhole(facts, 'electrodes');
  return isAll && bare.some((id) => !bonding.earthBy.perhaps.has(id)) ? 'yes' : 'unknown';
}

/** A panel's bond to the pipe is asked for, whatever else is known of it. */
const isRadio = ({ kind }: Equipment) => !/panel|meter/.test(kind);
