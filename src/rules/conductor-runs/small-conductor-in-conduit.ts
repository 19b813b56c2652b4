import { isAtLeast } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { isEnclosed } from './enclosure.ts';

/** 6 AWG, square metres. */
const leastM2 = 13.3e-6;

export const smallConductorInConduit = rule({
  id: 'small-conductor-in-conduit',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.64(B)', provenance: 'memory' },
  limits: [{ key: 'areaM2', value: leastM2, sense: 'least' }],
  needs: ['sections', 'conductors'],
  check({ sections, conductors }) {
    // a size that nobody knows is asked by the rules of size
    const wires = conductors.filter((c) => c.role === 'service electrode wire' && c.areaM2 !== null);
    if (wires.length === 0) return nothingThere({ sections }, 'conductors');
    return wires.flatMap(({ id, part, areaM2 }): readonly Verdict[] => {
      const at = [id];
      // met at any size: no figure for an owner to ask more of
      if (isEnclosed(part.enclosure) || part.runs === 'in conduit')
        return [{ is: 'met', at, because: { key: 'in conduit' } }];
      const measured = { key: 'areaM2', value: areaM2!, limit: leastM2, sense: 'least' } as const;
      const large = isAtLeast(areaM2!, leastM2 * (1 - 3e-3));
      const unsaid = { because: { key: 'nobody said' }, settle: { key: 'look' } };
      const below =
        part.enclosure === null ? { below: { ...unsaid, because: { key: 'thinner than an owner asks' } } } : {};
      if (large === 'yes') return [{ is: 'met', at, because: { key: 'large' }, measured, ...below }];
      if (large === 'no' && part.enclosure !== null) return [{ is: 'not met', at, because: { key: 'bare' }, measured }];
      return [{ is: 'cannot tell', at, ...unsaid }];
    });
  },
});
