import type { Line } from '../../site/site.ts';
import { type Interval, isAtMost } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { crossingsOf } from './crossing-lines.ts';

/** Rigid lines nearer than this are tied where they go in, metres (6 ft as printed). */
const nearM = 1.829;

export const waveguidesBondedTogether = rule({
  id: 'waveguides-bonded-together',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: 'waveguide grounding', provenance: 'read' },
  limits: [{ key: 'distanceLengthM', value: nearM, sense: 'least', of: 'where not tied' }],
  needs: ['sections', 'bonding', 'site'],
  check({ sections, bonding, site }) {
    const rigid = site.lines.filter((l) => l.present !== 'no' && /waveguide|rigid/i.test(l.cable ?? ''));
    const bondOf = (line: Line) => {
      const facts = bonding.lines.find((l) => l.id === line.id);
      const at = facts === undefined ? null : (crossingsOf(facts, 'shield')[0]?.bondedTo ?? null);
      return at === null ? undefined : bonding.groupOf.get(at.split('@')[0]!.split('.')[0]!);
    };
    const entering = rigid.filter((l) => bondOf(l) !== undefined);
    if (entering.length < 2) return nothingThere({ sections }, 'lines');
    const between = apart(site);
    return entering.flatMap((a, i) =>
      entering.slice(i + 1).map((b) => ofPair(a.id, b.id, bondOf(a) === bondOf(b), between(a.id, b.id))),
    );
  },
});

function ofPair(a: string, b: string, isOne: boolean, distanceM: Interval | null): Verdict {
  const at = [a, b];
  if (isOne) return { is: 'met', at, because: { key: 'tied' } };
  if (distanceM === null) return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'tape' } };
  const measured = { key: 'distanceLengthM', value: distanceM, limit: nearM, sense: 'least' } as const;
  const near = isAtMost(distanceM, nearM);
  if (near === 'no') return { is: 'met', at, because: { key: 'far' }, measured };
  if (near === 'yes') return { is: 'not met', at, because: { key: 'apart' }, measured };
  return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'tape' }, measured };
}
