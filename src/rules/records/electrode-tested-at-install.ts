import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { readingsOfEarth } from './readings-of-earth.ts';

export const electrodeTestedAtInstall = rule({
  id: 'electrode-tested-at-install',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'MIL-HDBK-419A', edition: null, clause: 'vol. II', provenance: 'read' },
  needs: ['sections', 'site'],
  check({ sections, site }) {
    // Readings are nothing that a look settles: with none typed nothing is asked.
    if (sections.readings === 'missing' || site.electrodes.length === 0) return nothingThere({ sections }, 'readings');
    // One that was set up and gave no figure measured nothing.
    const read = readingsOfEarth(site).filter((r) => r.resistance.length > 0 || r.reads !== null);
    const dated = read.filter((r) => r.date !== null);
    if (dated.length > 0) return [{ is: 'met', at: dated.map((r) => r.id), because: { key: 'dated' } }];
    if (read.length > 0)
      return [
        { is: 'cannot tell', at: read.map((r) => r.id), because: { key: 'undated' }, settle: { key: 'find the date' } },
      ];
    // Of a bare figure another condition asks how it was read.
    if (site.electrodes.some((e) => e.resistance !== null))
      return [{ is: 'not applicable', because: { key: 'stated' } }];
    return [{ is: 'not met', at: [], because: { key: 'never' } }];
  },
});
