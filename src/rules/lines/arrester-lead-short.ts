import type { ArresterFacts, ConductorFacts } from '../../facts/facts.ts';
import type { Site } from '../../site/site.ts';
import { isAtMost } from '../../units/interval.ts';
import { setFields } from '../changes/set-field.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { arresterLead } from './arrester-lead.ts';
import { howToMeasureLead } from './how-to-measure-lead.ts';

/** Longest lead between an arrester and its bar, metres. Ours. */
const longestLeadM = 0.1;
/** Of a surge device of the mains, which no bar carries: what surge-device-lead has for both sides together. */
const ofMainsM = 0.5;

export const arresterLeadShort = rule({
  id: 'arrester-lead-short',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'ours' },
  limits: [
    { key: 'leadLengthM', value: longestLeadM, sense: 'most' },
    { key: 'leadLengthM', value: ofMainsM, sense: 'most', of: 'surge device of the mains' },
  ],
  needs: ['sections', 'arresters', 'conductors', 'site'],
  check({ sections, arresters, conductors, site }) {
    if (arresters.length === 0) return nothingThere({ sections }, 'arresters');
    return arresters.map((a) => ofArrester(a, conductors, site));
  },
});

function ofArrester(a: ArresterFacts, conductors: readonly ConductorFacts[], site: Site): Verdict {
  const at = [a.id];
  const { bolted, lengthM: lead, wire } = arresterLead(a, conductors, site);
  if (bolted) return { is: 'met', at, because: { key: 'bolted' } };
  const isMains = a.part.kind === 'mains protector';
  const key = howToMeasureLead(a.part);
  if (lead === null) return { is: 'cannot tell', at, because: { key: 'lead unknown' }, settle: { key } };
  const limit = isMains ? ofMainsM : longestLeadM;
  const measured = { key: 'leadLengthM', value: lead, limit, sense: 'most' } as const;
  const short = isAtMost(lead, limit);
  if (short === 'yes') return { is: 'met', at, because: { key: 'short' }, measured };
  if (short === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'lead unknown' }, settle: { key }, measured };
  const bar = wire?.ends.find((id) => site.bars.some((b) => b.id === id));
  if (isMains) return { is: 'not met', at, because: { key: 'long' }, measured, under: `surge-device-lead:${a.id}` };
  const fields = wire === null ? { lead: '0 in' } : bar == null ? null : { on: bar };
  const change = fields === null ? {} : setFields('arresters', a.id, fields);
  return { is: 'not met', at, because: { key: 'long' }, measured, ...change };
}
