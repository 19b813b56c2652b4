import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { controlLines } from './crossing-lines.ts';
import { coresProtected } from './unprotected.ts';

export const arresterOnEveryControlLine = rule({
  id: 'arrester-on-every-control-line',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'NFPA 780; ITU-T K.56', edition: null, clause: 'surge protection; 8.3', provenance: 'memory' },
  needs: ['sections', 'bonding', 'site'],
  check(facts) {
    const lines = facts.bonding.lines.filter((l) => controlLines.includes(l.kind));
    const verdicts = lines.flatMap((l) => coresProtected(l, facts.site));
    return verdicts.length > 0 ? verdicts : nothingThere(facts, 'lines');
  },
});
