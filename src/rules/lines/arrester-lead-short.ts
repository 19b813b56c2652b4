import type { ArresterFacts } from '../../facts/facts.ts';
import type { Site } from '../../site/site.ts';
import { isAtMost } from '../../units/interval.ts';
import { setFields } from '../changes/set-field.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Longest lead between an arrester and its bar, metres. Ours. */
const longestLeadM = 0.1;

export const arresterLeadShort = rule({
  id: 'arrester-lead-short',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'ours' },
  limits: [{ key: 'leadLengthM', value: longestLeadM, sense: 'most' }],
  needs: ['sections', 'arresters', 'site'],
  check({ sections, arresters, site }) {
    if (arresters.length === 0) return nothingThere({ sections }, 'arresters');
    return arresters.map((a) => ofArrester(a, site));
  },
});

function ofArrester(a: ArresterFacts, site: Site): Verdict {
  const at = [a.id];
  const lead = a.part.leadM;
  const onBar = site.bars.some((b) => b.id === a.part.on?.part);
  if (lead === null) {
    if (onBar && a.bonded === 'yes') return { is: 'met', at, because: { key: 'bolted' } };
    return { is: 'cannot tell', at, because: { key: 'lead unknown' }, settle: { key: 'measure it' } };
  }
  const measured = { key: 'leadLengthM', value: lead, limit: longestLeadM, sense: 'most' } as const;
  const short = isAtMost(lead, longestLeadM);
  if (short === 'yes') return { is: 'met', at, because: { key: 'short' }, measured };
  if (short === 'no')
    return { is: 'not met', at, because: { key: 'long' }, measured, ...setFields('arresters', a.id, { lead: '0 in' }) };
  return { is: 'cannot tell', at, because: { key: 'lead unknown' }, settle: { key: 'measure it' }, measured };
}
