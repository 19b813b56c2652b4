import { jointKind } from '../../materials/joints.ts';
import { buriedClamp } from '../changes/buried-clamp.ts';
import { rule } from '../rule.ts';
import { eachJoint } from './typed-joints.ts';

export const clampListedForBurial = rule({
  id: 'clamp-listed-for-burial',
  family: 'code',
  severity: 'defect',
  codeSets: ['us', 'ca'],
  source: { document: 'NFPA 70', edition: null, clause: '250.70', provenance: 'second-hand' },
  needs: ['sections', 'joints', 'site'],
  check: (facts) => {
    const electrodes = new Set(facts.site.electrodes.map((e) => e.id));
    return eachJoint(facts, (j) => {
      const at = [j.id];
      const kind = jointKind(j.kind);
      if (j.on === null || !electrodes.has(j.on) || j.buried === 'no' || kind?.permanent) return null;
      if (j.forBurial === 'yes') return { is: 'met', at, because: { key: 'listed' } };
      if (j.forBurial === 'no' && j.buried === 'unknown')
        return { is: 'cannot tell', at, because: { key: 'perhaps buried' }, settle: { key: 'look down' } };
      if (j.forBurial === 'no' && kind === null)
        return { is: 'cannot tell', at, because: { key: 'kind unknown' }, settle: { key: 'look at kind' } };
      if (j.forBurial === 'no')
        return { is: 'not met', at, because: { key: 'not for soil' }, ...buriedClamp(facts.site, j.id) };
      if (j.buried === 'yes')
        return { is: 'cannot tell', at, because: { key: 'stamp unknown' }, settle: { key: 'look at stamp' } };
      return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' } };
    });
  },
});
