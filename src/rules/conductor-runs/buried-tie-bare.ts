import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const buriedTieBare = rule({
  id: 'buried-tie-bare',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'ours' },
  needs: ['sections', 'conductors'],
  check({ sections, conductors }) {
    const ties = conductors.filter((c) => c.role === 'electrode tie' && c.inSoil === 'yes');
    if (ties.length === 0) return nothingThere({ sections }, 'conductors');
    const said = ties.flatMap(({ id, wire }): readonly Verdict[] => {
      if (wire === null || wire.insulated === 'unknown') return [];
      if (wire.insulated === 'no') return [{ is: 'met', at: [id], because: { key: 'bare' } }];
      return [{ is: 'not met', at: [id], because: { key: 'covered' } }];
    });
    // bare is what the reader takes where nobody said, and lists among its assumptions
    return said.length > 0 ? said : [{ is: 'not looked at', because: { key: 'nobody said' } }];
  },
});
