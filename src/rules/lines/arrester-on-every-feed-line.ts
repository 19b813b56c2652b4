import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { feedLines } from './crossing-lines.ts';
import { coresProtected } from './unprotected.ts';

export const arresterOnEveryFeedLine = rule({
  id: 'arrester-on-every-feed-line',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'memory' },
  needs: ['sections', 'bonding'],
  check(facts) {
    const lines = facts.bonding.lines.filter((l) => feedLines.includes(l.kind));
    const verdicts = lines.flatMap(coresProtected);
    return verdicts.length > 0 ? verdicts : nothingThere(facts, 'lines');
  },
});
