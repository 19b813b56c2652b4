import { type BuriedArm, buriedArms, usefulLength } from '../../facts/strike-facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const buriedRunEffective = rule({
  id: 'buried-run-effective',
  family: 'strike',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document:
      'effective length with the soil breaking down, IEEE Trans. Power Delivery 20, for a front of 1 µs and 30 kA',
    edition: '2005',
    clause: null,
    provenance: 'memory',
  },
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const arms = buriedArms(site);
    if (arms.length === 0) return nothingThere({ sections }, 'electrodes');
    return arms.map((arm) => ofArm(arm, () => usefulLength(site, arm.depthM)));
  },
});

function ofArm({ electrode, armM }: BuriedArm, useful: () => ReturnType<typeof usefulLength>): Verdict {
  const at = [electrode];
  if (armM === null)
    return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' } };
  const { usefulM, isKnown } = useful();
  const measured = { key: 'armM', value: armM, limit: usefulM.high, sense: 'most' } as const;
  if (armM.high <= usefulM.low) return { is: 'met', at, because: { key: 'short' }, measured };
  if (armM.low > usefulM.high)
    return { is: 'not met', at, because: { key: 'long', values: { armM, usefulM } }, measured };
  if (!isKnown)
    return { is: 'cannot tell', at, because: { key: 'no soil', values: { armM } }, settle: { key: 'type soil' } };
  const isRun = armM.low <= usefulM.low && armM.high > usefulM.high;
  const settle = isRun || armM.low < armM.high ? 'measure it' : 'measure soil';
  return { is: 'cannot tell', at, because: { key: 'near', values: { armM, usefulM } }, settle: { key: settle } };
}
