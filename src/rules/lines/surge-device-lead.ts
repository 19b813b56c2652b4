import type { Arrester } from '../../site/site.ts';
import { add, type Interval, isAtMost } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Longest leads of a surge device of the mains, both sides together, metres (1 m in older text). */
const longestM = 0.5;

export const surgeDeviceLead = rule({
  id: 'surge-device-lead',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 60364-5-53', edition: null, clause: '534', provenance: 'memory' },
  limits: [{ key: 'leadLengthM', value: longestM, sense: 'most', of: 'both sides together' }],
  needs: ['sections', 'arresters'],
  check({ sections, arresters }) {
    const mains = arresters.filter((a) => a.part.kind === 'mains protector');
    return mains.length === 0 ? nothingThere({ sections }, 'arresters') : mains.map((a) => ofDevice(a.part));
  },
});

/** One side alone can be too long; both have to be known for it to be short enough. */
function ofDevice({ id, leadM, lineLeadM }: Arrester): Verdict {
  const at = [id];
  const known = [leadM, lineLeadM ?? null].filter((l) => l !== null);
  const total = known.reduce<Interval | null>((sum, l) => (sum === null ? l : add(sum, l)), null);
  if (total !== null && isAtMost(total, longestM) === 'no') {
    const measured = { key: 'leadLengthM', value: total, limit: longestM, sense: 'most' } as const;
    return { is: 'not met', at, because: { key: 'long' }, measured };
  }
  if (total !== null && known.length === 2 && isAtMost(total, longestM) === 'yes') {
    const measured = { key: 'leadLengthM', value: total, limit: longestM, sense: 'most' } as const;
    return { is: 'met', at, because: { key: 'short' }, measured };
  }
  return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'tape' } };
}
