import type { LineFacts } from '../../bonding/bonding.ts';
import type { Site } from '../../site/site.ts';
import { addArrester } from '../changes/add-arrester.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { feedLines } from './crossing-lines.ts';
import { coresProtected } from './unprotected.ts';

export const arresterOnEveryFeedLine = rule({
  id: 'arrester-on-every-feed-line',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'memory' },
  needs: ['sections', 'bonding', 'site'],
  check(facts) {
    const lines = facts.bonding.lines.filter((l) => feedLines.includes(l.kind));
    const verdicts = lines.flatMap((l) => {
      const found = coresProtected(l, facts.site).map((v) => withArrester(v, l, facts.site));
      return l.kind === 'coax' ? found : found.map(underCode);
    });
    return verdicts.length > 0 ? verdicts : nothingThere(facts, 'lines');
  },
});

/** Of an open line the code asks the same unit: one finding, the code's where it is asked. */
function underCode(v: Verdict): Verdict {
  return v.is === 'not met' ? { ...v, under: `discharge-unit-present:${v.at.join('+')}` } : v;
}

function withArrester(v: Verdict, line: LineFacts, site: Site): Verdict {
  return v.is === 'not met' && v.because.key === 'bare' ? { ...v, ...addArrester(site, line) } : v;
}
