import type { ConductorFacts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { isEnclosed } from './enclosure.ts';

const names = /downspout|down ?pipe|gutter|rain/i;

export const notInDownspout = rule({
  id: 'not-in-downspout',
  family: 'code',
  severity: 'defect',
  codeSets: ['us', 'iec'],
  source: { document: 'UL 96A; IEC 62305-3', edition: '2007; 2010', clause: '9.3.5; 5.3.4', provenance: 'read' },
  needs: ['sections', 'conductors', 'site'],
  check({ sections, conductors, site }) {
    const gutters = new Set(site.metalwork.filter((m) => names.test(m.kind)).map((m) => m.id));
    const verdicts = conductors
      .filter((c) => c.lightningPath || c.role === 'down conductor')
      .flatMap((c) => ofConductor(c, gutters) ?? []);
    return verdicts.length > 0 ? verdicts : nothingThere({ sections }, 'conductors');
  },
});

/** null: nobody said what it is in or on; only a down conductor beside a typed gutter is asked about. */
function ofConductor(c: ConductorFacts, gutters: ReadonlySet<string>): Verdict | null {
  const at = [c.id];
  const { enclosure, on } = c.part;
  if (names.test(enclosure ?? '') || gutters.has(on?.part ?? ''))
    return { is: 'not met', at, because: { key: 'in it' } };
  if (on?.part != null || isEnclosed(enclosure)) return { is: 'met', at, because: { key: 'elsewhere' } };
  if (c.role !== 'down conductor' || gutters.size === 0) return null;
  return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'walk' } };
}
