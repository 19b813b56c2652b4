import { jointKind } from '../../materials/joints.ts';
import { buriedClamp } from '../changes/buried-clamp.ts';
import { rule } from '../rule.ts';
import { eachJoint } from './typed-joints.ts';

export const jointMethodAllowed = rule({
  id: 'joint-method-allowed',
  family: 'code',
  severity: 'defect',
  codeSets: ['us', 'ca'],
  source: { document: 'NFPA 70', edition: null, clause: '250.8, 250.70', provenance: 'second-hand' },
  needs: ['sections', 'joints', 'site'],
  check: (facts) => {
    const electrodes = new Set(facts.site.electrodes.map((e) => e.id));
    return eachJoint(facts, ({ id, kind, on, listed }) => {
      const at = [id];
      if (on === null || !electrodes.has(on)) return null;
      const values = { kind };
      const allowed = jointKind(kind)?.forElectrodes;
      if (allowed === 'no') {
        const own = ownRules.get(kind ?? '');
        const cause = own === undefined ? {} : { under: `${own}:${id}` };
        return {
          is: 'not met',
          at,
          because: { key: 'not a method', values },
          ...cause,
          ...buriedClamp(facts.site, id),
        };
      }
      if (allowed === 'yes' || (allowed === 'if listed' && listed === 'yes'))
        return { is: 'met', at, because: { key: 'a method', values } };
      if (allowed === 'if listed' && listed === 'no')
        return { is: 'not met', at, because: { key: 'not listed', values } };
      return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' } };
    });
  },
});

/** Kinds that a rule of their own finds, on whatever they are. */
const ownRules: ReadonlyMap<string, string> = new Map([
  ['twist', 'no-twist-joint'],
  ['sheet-metal screw', 'no-sheet-metal-screw'],
  ['solder', 'no-solder-in-path'],
]);
