import type { Crossing } from '../../bonding/bonding.ts';
import type { Facts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { crossingsOf } from './crossing-lines.ts';

export const canadaCoaxShieldGrounded = rule({
  id: 'canada-coax-shield-grounded',
  family: 'code',
  severity: 'defect',
  codeSets: ['ca'],
  source: {
    document: 'Canadian Electrical Code Part I',
    edition: null,
    clause: '54-200, 54-910',
    provenance: 'second-hand',
  },
  needs: ['sections', 'bonding'],
  check({ sections, bonding }) {
    const coax = bonding.lines.filter((l) => l.kind === 'coax' || l.kind === 'cable tv');
    const verdicts = coax.flatMap((l) => crossingsOf(l, 'shield').flatMap((c) => ofCrossing(c, bonding)));
    return verdicts.length > 0 ? verdicts : nothingThere({ sections }, 'lines');
  },
});

/** A shield that nothing bonds at the wall, or a wall that nobody typed, is asked about already. */
function ofCrossing({ line, bondedTo, certain }: Crossing, { earthBy }: Facts['bonding']): readonly Verdict[] {
  const at = [line];
  const part = bondedTo?.split('@')[0]?.split('.')[0] ?? null;
  if (part !== null && earthBy.bonds.has(part)) return [{ is: 'met', at, because: { key: 'grounded' } }];
  if (part !== null && earthBy.perhaps.has(part))
    return [{ is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } }];
  if (!certain) return [];
  return [{ is: 'not met', at, because: { key: 'bare' }, under: `shield-bonded-at-entry:${line}` }];
}
