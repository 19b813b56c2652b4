import type { Crossing } from '../../bonding/bonding.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { crossingsOf } from './crossing-lines.ts';

/** Lines whose shield comes in from outside. */
const shielded: readonly string[] = ['coax', 'cable tv'];

export const shieldBondedAtEntry = rule({
  id: 'shield-bonded-at-entry',
  family: 'practice',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: 'waveguide grounding', provenance: 'read' },
  needs: ['sections', 'bonding'],
  check({ sections, bonding }) {
    const crossings = bonding.lines.filter((l) => shielded.includes(l.kind)).flatMap((l) => crossingsOf(l, 'shield'));
    if (crossings.length === 0) return nothingThere({ sections }, 'lines');
    return [...new Set(crossings.map((c) => c.line))].map((line) =>
      ofLine(
        line,
        crossings.filter((c) => c.line === line),
      ),
    );
  },
});

function ofLine(line: string, crossings: readonly Crossing[]): Verdict {
  const at = [line];
  const bare = crossings.filter((c) => c.bondedTo === null);
  if (bare.some((c) => c.certain)) return { is: 'not met', at, because: { key: 'bare' } };
  if (bare.length > 0)
    return { is: 'cannot tell', at, because: { key: 'place unknown' }, settle: { key: 'follow it' } };
  return { is: 'met', at, because: { key: 'bonded', values: { bondedTo: crossings.map((c) => c.bondedTo ?? '') } } };
}
