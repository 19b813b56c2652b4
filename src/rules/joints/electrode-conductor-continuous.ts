import type { ConductorFacts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const electrodeConductorContinuous = rule({
  id: 'electrode-conductor-continuous',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.64(C)', provenance: 'second-hand' },
  needs: ['sections', 'conductors'],
  check({ sections, conductors }) {
    const wires = conductors.filter((c) => c.role === 'service electrode wire');
    return wires.length === 0 ? nothingThere({ sections }, 'conductors') : wires.map(ofWire);
  },
});

const allowed: ReadonlySet<string> = new Set(['irreversible crimp', 'exothermic weld', 'none']);

function ofWire({ id, part }: ConductorFacts): Verdict {
  const at = [id];
  const kinds = part.splices.map((s) => s.kind);
  if (kinds.some((kind) => kind !== null && !allowed.has(kind)))
    return { is: 'not met', at, because: { key: 'spliced' } };
  if (kinds.includes(null))
    return { is: 'cannot tell', at, because: { key: 'splice unknown' }, settle: { key: 'look at splice' } };
  if (kinds.length > 0) return { is: 'met', at, because: { key: 'allowed splice' } };
  if (part.onePiece || part.typed.joints !== undefined) return { is: 'met', at, because: { key: 'one piece' } };
  return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'follow' } };
}
