import type { Metalwork } from '../../site/site.ts';
import { isAtMost } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Farthest from the meter or the entry at which a service pipe is bonded, metres. */
const farthestM = 0.6;
const services: readonly string[] = ['gas pipe', 'water pipe', 'oil pipe'];

export const ukServicePipeBond = rule({
  id: 'uk-service-pipe-bond',
  family: 'code',
  severity: 'hazard',
  codeSets: ['uk'],
  source: { document: 'BS 7671', edition: null, clause: '544.1.2', provenance: 'memory' },
  limits: [{ key: 'clampLengthM', value: farthestM, sense: 'most' }],
  needs: ['sections', 'bonding', 'site'],
  check({ sections, bonding, site }) {
    const pipes = site.metalwork.filter((m) => services.includes(m.kind) && m.present !== 'no');
    if (pipes.length === 0) return nothingThere({ sections }, 'metalwork');
    const bonded = pipes.filter((p) => bonding.serviceBy.bonds.has(p.id));
    return bonded.length === 0 ? [{ is: 'not applicable', because: { key: 'not bonded' } }] : bonded.map(ofPipe);
  },
});

/** Whether a pipe is bonded at all is asked of its own. */
function ofPipe({ id, clampFromEntryM: clamp }: Metalwork): Verdict {
  const at = [id];
  const near = clamp == null ? 'unknown' : isAtMost(clamp, farthestM);
  if (near === 'unknown') return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'tape' } };
  const measured = { key: 'clampLengthM', value: clamp!, limit: farthestM, sense: 'most' } as const;
  if (near === 'yes') return { is: 'met', at, because: { key: 'near' }, measured };
  return { is: 'not met', at, because: { key: 'far' }, measured };
}
