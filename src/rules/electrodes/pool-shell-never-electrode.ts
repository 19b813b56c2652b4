import type { ConductorFacts } from '../../facts/facts.ts';
import { isPool } from '../is-pool.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** What must not find its only earth in a pool. */
const leads: readonly ConductorFacts['role'][] = ['mast lead', 'arrester lead', 'down conductor'];

export const poolShellNeverElectrode = rule({
  id: 'pool-shell-never-electrode',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2017', clause: '250.52(B)(3)', provenance: 'memory' },
  since: 2017,
  needs: ['header', 'sections', 'site', 'conductors', 'bonding'],
  check(facts) {
    const { site, conductors, bonding } = facts;
    const pools = site.metalwork.filter((m) => isPool(m.kind) && m.present !== 'no');
    if (pools.length === 0) return nothingThere(facts, 'metalwork');
    return pools.map((p): Verdict => {
      // A bond to the pool is asked for beside it; what has no other way to earth uses it as an electrode.
      const used = conductors.filter((c) => leads.includes(c.role) && [...c.ends, ...c.passes].includes(p.id));
      const lacks = (earthed: ReadonlySet<string>) =>
        used.filter((c) => c.ends.some((id) => id !== null && id !== p.id && !earthed.has(id)));
      const isAll = isWhole(facts, 'conductors') && isWhole(facts, 'electrodes');
      const only = isAll ? lacks(bonding.earthBy.perhaps) : [];
      const at = [p.id];
      if (only.length > 0)
        return { is: 'not met', at, because: { key: 'used', values: { by: only.map((c) => c.id) } } };
      const open = lacks(bonding.earthBy.bonds).map((c) => c.id);
      if (open.length > 0)
        return { is: 'cannot tell', at, because: { key: 'other way', values: { by: open } }, settle: { key: 'trace' } };
      if (!isWhole(facts, 'conductors'))
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
      return { is: 'met', at, because: { key: 'not used' } };
    });
  },
});
