import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { rule, type Verdict } from '../rule.ts';

/** Electrodes that a test joint is not asked before: foundations and frames. */
const natural: readonly string[] = ['concrete-encased', 'structural steel'];

export const testJointPresent = rule({
  id: 'test-joint-present',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: '5.3.6', provenance: 'read' },
  needs: ['header', 'conductors', 'joints', 'site', 'bonding'],
  check(facts) {
    const system = lightningSystem(facts);
    if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const kinds = new Map(facts.site.electrodes.map((e) => [e.id, e.kind]));
    const asked = system.down.filter((c) => !c.ends.some((id) => natural.includes(kinds.get(id ?? '') ?? '')));
    if (asked.length === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
    return asked.map((c) => ofConductor(c, facts.joints));
  },
});

function ofConductor(c: ConductorFacts, joints: Facts['joints']): Verdict {
  const at = [c.id];
  const own = joints.filter((j) => j.holds.includes(c.id));
  if (own.some((j) => j.forTest === 'yes')) return { is: 'met', at, because: { key: 'there' } };
  const isSaid = own.length > 0 && own.every((j) => j.forTest === 'no');
  if (isSaid || c.part.onePiece) return { is: 'not met', at, because: { key: 'missing' } };
  return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' } };
}
