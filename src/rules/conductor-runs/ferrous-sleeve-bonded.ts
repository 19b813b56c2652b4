import type { ConductorFacts } from '../../facts/facts.ts';
import { setFields } from '../changes/set-field.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { enclosureMetal, isEnclosed } from './enclosure.ts';

export const ferrousSleeveBonded = rule({
  id: 'ferrous-sleeve-bonded',
  family: 'code',
  severity: 'defect',
  codeSets: ['any'],
  source: {
    document: 'NFPA 70; UL 96A; MIL-HDBK-419A',
    edition: 'vol. II',
    clause: '250.64(E), 810.21(D); 9.3.3',
    provenance: 'read',
  },
  needs: ['sections', 'conductors'],
  check({ sections, conductors }) {
    const asked = conductors.filter(({ part }) => isEnclosed(part.enclosure) || isInConduit(part));
    return asked.length === 0 ? nothingThere({ sections }, 'conductors') : asked.map(ofConductor);
  },
});

/** It runs in one, and nobody said of what it is. */
const isInConduit = ({ enclosure, runs }: ConductorFacts['part']) => enclosure === null && runs === 'in conduit';

function ofConductor({ id, part }: ConductorFacts): Verdict {
  const at = [id];
  const metal = isInConduit(part) ? 'unknown' : enclosureMetal(part.enclosure);
  if (metal === 'not ferrous') return { is: 'met', at, because: { key: 'no iron' } };
  if (part.enclosureBonded === 'both ends') return { is: 'met', at, because: { key: 'both ends' } };
  if (metal === 'unknown') return { is: 'cannot tell', at, because: { key: 'metal unknown' }, settle: { key: 'look' } };
  if (part.enclosureBonded == null)
    return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' } };
  return {
    is: 'not met',
    at,
    because: { key: 'choke' },
    ...setFields('conductors', id, { enclosure_bonded: 'both ends' }),
  };
}
