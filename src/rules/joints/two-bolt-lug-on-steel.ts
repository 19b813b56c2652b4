import { setJoint } from '../changes/set-joint.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { ifSaidOfJoints, isBuilt } from './pressed-joints.ts';

const leastBolts = 2;

export const twoBoltLugOnSteel = rule({
  id: 'two-bolt-lug-on-steel',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'common practice', edition: null, clause: null, provenance: 'second-hand' },
  limits: [{ key: 'bolts', value: leastBolts, sense: 'least' }],
  needs: ['sections', 'joints', 'site'],
  check(facts) {
    const { joints, site } = facts;
    const supports = new Set(site.supports.map((s) => s.id));
    const lugs = joints.filter(
      (j) => j.kind === 'bolted lug' && j.on !== null && supports.has(j.on) && /steel/.test(j.onMetal?.name ?? ''),
    );
    if (lugs.length === 0) return nothingThere(facts, 'conductors');
    const said = lugs.flatMap(({ id, bolts }): readonly Verdict[] => {
      if (bolts === null) return [];
      const measured = { key: 'bolts', value: bolts, limit: leastBolts, sense: 'least' } as const;
      if (bolts >= leastBolts) return [{ is: 'met', at: [id], because: { key: 'two' }, measured }];
      return [{ is: 'not met', at: [id], because: { key: 'one' }, measured, ...setJoint(site, id, { bolts: '2' }) }];
    });
    const unsaid = lugs.filter((j) => j.bolts === null && isBuilt(j, facts)).map((j) => j.id);
    if (said.length === 0 && unsaid.length === 0) return [{ is: 'not applicable', because: { key: 'to be built' } }];
    return ifSaidOfJoints(said, unsaid, facts);
  },
});
