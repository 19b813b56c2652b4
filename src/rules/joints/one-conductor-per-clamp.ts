import { rule } from '../rule.ts';
import { lookAtJoint } from './behind-cover.ts';
import { eachJoint } from './typed-joints.ts';

/** Joints that press on one wire; a twist or a screw holds none too well. */
const clamps: readonly string[] = [
  'rod clamp',
  'acorn clamp',
  'pipe clamp',
  'hose clamp',
  'set-screw lug',
  'bolted lug',
  'U-bolt',
  'twist',
  'sheet-metal screw',
];

export const oneConductorPerClamp = rule({
  id: 'one-conductor-per-clamp',
  family: 'code',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: null, clause: '250.70', provenance: 'second-hand' },
  needs: ['sections', 'joints', 'site'],
  check: (facts) =>
    eachJoint(facts, (j) => {
      const { id, kind, holds, forWires } = j;
      const at = [id];
      const values = { holds };
      if (holds.length <= 1)
        return kind !== null && clamps.includes(kind) ? { is: 'met', at, because: { key: 'one' } } : null;
      if (forWires !== null && holds.length <= forWires)
        return { is: 'met', at, because: { key: 'listed for several', values } };
      if (kind === null || kind === 'other')
        return {
          is: 'cannot tell',
          at,
          because: { key: 'kind unknown', values },
          settle: { key: lookAtJoint(j, facts.site) },
        };
      if (!clamps.includes(kind)) return { is: 'met', at, because: { key: 'made for several', values } };
      return { is: 'not met', at, because: { key: 'several', values } };
    }),
});
