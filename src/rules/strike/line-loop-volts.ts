import type { Facts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { canJudgePairs, judgedPairs, withstandV } from './judged-pairs.ts';
import { foldedStrikeDoubt } from './strike-doubt.ts';

export const lineLoopVolts = rule({
  id: 'line-loop-volts',
  family: 'strike',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'IEC 60664-1, rated impulse voltage of category II at 230/400 V',
    edition: null,
    clause: 'table F.1',
    provenance: 'memory',
  },
  needs: ['sections', 'site', 'strike', 'electrodes'],
  check(facts) {
    const { site, sections, electrodes } = facts;
    if (!canJudgePairs(site)) return nothingThere({ sections }, 'lines');
    const { strike } = facts;
    const loops = judgedPairs(strike, site).filter(({ pair }) => pair.why === 'line');
    if (strike.refused === null && loops.length === 0) return nothingThere({ sections }, 'lines');
    const doubts = foldedStrikeDoubt({ strike, site, sections, electrodes });
    return doubts ?? loops.map((loop) => ofLoop(loop, strike));
  },
});

/** What the bonds hold together needs no second look; what they do not may be the fault of the loop. */
function ofLoop({ pair, peak, wayM }: Facts['strike']['differences'][number], strike: Facts['strike']): Verdict {
  const at = [pair.a, pair.b];
  if (Math.abs(peak.value) <= withstandV) return { is: 'met', at, because: { key: 'held' } };
  const under = `boxes-held-together:${at.join('+')}`;
  if (!Number.isFinite(wayM)) return { is: 'met', at, because: { key: 'no loop' } };
  const induced = strike.coupling(pair);
  if (induced === null)
    return { is: 'cannot tell', at, because: { key: 'no places' }, settle: { key: 'type places' }, under };
  const loopV = Math.abs(induced.value);
  const measured = { key: 'loopV', value: loopV, limit: withstandV, sense: 'most' } as const;
  if (loopV <= withstandV) return { is: 'met', at, because: { key: 'small' }, measured };
  return { is: 'not met', at, because: { key: 'couples', values: { loopV, wayM } }, measured, under };
}
