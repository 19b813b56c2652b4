import { setFields } from '../changes/set-field.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { crossingsOf } from './crossing-lines.ts';

export const dripLoop = rule({
  id: 'drip-loop',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'memory' },
  needs: ['sections', 'bonding', 'site'],
  check({ sections, bonding, site }) {
    const crossing = new Set(bonding.lines.filter((l) => crossingsOf(l, 'core').length > 0).map((l) => l.id));
    // a line in the soil brings no rain along
    const lines = site.lines.filter((l) => crossing.has(l.id) && l.kind !== 'mains' && l.buried !== 'yes');
    if (lines.length === 0) return nothingThere({ sections }, 'lines');
    const isTyped = lines.some((l) => l.dripLoop !== 'unknown');
    if (!isTyped) return [{ is: 'not looked at', because: { key: 'not typed' } }];
    return lines.map(({ id, dripLoop: loop }): Verdict => {
      if (loop === 'yes') return { is: 'met', at: [id], because: { key: 'loop' } };
      if (loop === 'no')
        return {
          is: 'not met',
          at: [id],
          because: { key: 'no loop' },
          ...setFields('lines', id, { drip_loop: 'yes' }),
        };
      return { is: 'cannot tell', at: [id], because: { key: 'nobody said' }, settle: { key: 'look' } };
    });
  },
});
