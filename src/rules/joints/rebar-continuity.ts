import type { Reading } from '../../site/site.ts';
import { isAtMost } from '../../units/interval.ts';
import { claimsOf } from '../claims.ts';
import { rule, type Verdict } from '../rule.ts';

const mostOhm = 0.2;

export const rebarContinuity = rule({
  id: 'rebar-continuity',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: '4.3', provenance: 'memory' },
  limits: [{ key: 'resistanceOhm', value: mostOhm, sense: 'most' }],
  needs: ['header', 'site'],
  check({ header, site }) {
    if (!claimsOf(header).lightning) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const frames = site.metalwork.filter((m) => m.kind === 'steel frame');
    const steel = [...site.electrodes.filter((e) => e.kind === 'structural steel'), ...frames];
    const there = steel.filter((p) => p.present !== 'no').map((p) => p.id);
    if (there.length === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
    return there.map((id) => ofSteel(id, site.readings));
  },
});

/** Both probes on the steel itself, at its top and at its foot. */
function ofSteel(id: string, readings: readonly Reading[]): Verdict {
  const at = [id];
  const reads = readings.flatMap(({ kind, between, reads: ohm }) =>
    kind === 'continuity' && ohm !== null && (between ?? []).every((p) => p.part === id) && between !== null
      ? [ohm]
      : [],
  );
  const last = reads.at(-1);
  if (last === undefined)
    return { is: 'cannot tell', at, because: { key: 'nobody measured' }, settle: { key: 'measure it' } };
  if (last.overRange) return { is: 'not met', at, because: { key: 'high' } };
  const measured = { key: 'resistanceOhm', value: last.ohm, limit: mostOhm, sense: 'most' } as const;
  const low = isAtMost(last.ohm, mostOhm);
  if (low === 'yes') return { is: 'met', at, because: { key: 'low' }, measured };
  if (low === 'no') return { is: 'not met', at, because: { key: 'high' }, measured };
  return { is: 'cannot tell', at, because: { key: 'not exact' }, settle: { key: 'measure it' }, measured };
}
