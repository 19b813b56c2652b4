import type { Facts } from '../../facts/facts.ts';
import { rule, type Verdict } from '../rule.ts';
import { sparkFieldVPerM } from './spark-field.ts';
import { foldedStrikeDoubt } from './strike-doubt.ts';

export const pulledGapHolds = rule({
  id: 'pulled-gap-holds',
  family: 'strike',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'field in which a streamer runs on in air: 5 kV/cm',
    edition: null,
    clause: null,
    provenance: 'memory',
  },
  needs: ['sections', 'site', 'strike', 'electrodes'],
  check(facts) {
    const { site, sections, electrodes } = facts;
    const canStrike = site.supports.length + site.antennas.length > 0;
    if (!canStrike || site.states.every((s) => s.open.length === 0)) return none;
    const { strike } = facts;
    if (strike.refused === null && strike.gaps.length === 0) return none;
    return foldedStrikeDoubt({ strike, site, sections, electrodes }) ?? strike.gaps.map(ofGap);
  },
});

/** In the state that is looked at nothing is pulled of which both sides hang on something. */
const none: readonly Verdict[] = [{ is: 'not applicable', because: { key: 'none' } }];

function ofGap({ line, gapM, peak }: Facts['strike']['gaps'][number]): Verdict {
  const at = [line];
  const gapV = Math.abs(peak.value);
  if (gapM === null) {
    return { is: 'cannot tell', at, because: { key: 'gap unknown', values: { gapV } }, settle: { key: 'measure it' } };
  }
  if (gapV <= sparkFieldVPerM * gapM.low) {
    const measured = { key: 'gapV', value: gapV, limit: sparkFieldVPerM * gapM.low, sense: 'most' } as const;
    return { is: 'met', at, because: { key: 'wide' }, measured };
  }
  const measured = { key: 'gapV', value: gapV, limit: sparkFieldVPerM * gapM.high, sense: 'most' } as const;
  if (gapV > sparkFieldVPerM * gapM.high)
    return { is: 'not met', at, because: { key: 'narrow', values: { gapV, gapLengthM: gapM } }, measured };
  return { is: 'cannot tell', at, because: { key: 'gap unknown', values: { gapV } }, settle: { key: 'measure it' } };
}
