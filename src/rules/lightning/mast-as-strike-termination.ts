import { isAtLeast } from '../../units/interval.ts';
import { claimsOf } from '../claims.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Least wall of a metal mast that stands in for an air terminal, metres (3/16 in). */
const leastWallM = 0.0048;
const tubes: readonly string[] = ['mast', 'roof mast', 'tilt-over mast'];

export const mastAsStrikeTermination = rule({
  id: 'mast-as-strike-termination',
  family: 'code',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'NFPA 780', edition: null, clause: '4.6', provenance: 'memory' },
  limits: [{ key: 'wallLengthM', value: leastWallM, sense: 'least' }],
  needs: ['header', 'sections', 'masts', 'site'],
  check(facts) {
    const masts = facts.masts.filter((m) => m.metal !== 'no' && tubes.includes(m.part.kind));
    if (masts.length === 0) return nothingThere(facts, 'supports');
    const hasTerminals = facts.site.supports.some((s) => s.kind === 'air terminal' && s.present !== 'no');
    if (!claimsOf(facts.header).lightning || hasTerminals)
      return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    return masts.map(({ id, part: { wallM } }): Verdict => {
      const at = [id];
      const enough = wallM == null ? 'unknown' : isAtLeast(wallM, leastWallM * printedShare);
      if (enough === 'unknown')
        return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'measure' } };
      const measured = { key: 'wallLengthM', value: wallM!, limit: leastWallM, sense: 'least' } as const;
      if (enough === 'yes') return { is: 'met', at, because: { key: 'thick' }, measured };
      return { is: 'not met', at, because: { key: 'thin' }, measured };
    });
  },
});

/** 3/16 in as printed is 4.76 mm. */
const printedShare = 0.99;
