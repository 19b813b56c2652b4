import type { ConductorFacts } from '../../facts/facts.ts';
import { claimsOf } from '../claims.ts';
import { bestCopper, copperSettles } from '../copper-section.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Least section of copper, square metres (1/0 AWG as printed). */
const leastAreaM2 = 53.5e-6;
const services: readonly string[] = ['water pipe', 'sewer pipe'];

export const buriedServicesBonded = rule({
  id: 'buried-services-bonded',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: '1.2.4', provenance: 'read' },
  limits: [{ key: 'areaM2', value: leastAreaM2, sense: 'least', of: 'copper' }],
  needs: ['header', 'sections', 'conductors', 'site'],
  check(facts) {
    if (!claimsOf(facts.header).military) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const pipes = facts.site.metalwork.filter((m) => services.includes(m.kind) && m.buried === 'yes');
    const bonded = pipes
      .map((p) => ({ id: p.id, by: facts.conductors.filter((c) => [...c.ends, ...c.passes].includes(p.id)) }))
      .filter(({ by }) => by.length > 0);
    return bonded.length === 0 ? nothingThere(facts, 'metalwork') : bonded.map(({ id, by }) => ofPipe(id, by));
  },
});

/** The thickest conductor on it; a pipe that nothing bonds is asked about of its own. */
function ofPipe(id: string, by: readonly ConductorFacts[]): Verdict {
  const at = [id];
  const { is, ...figure } = bestCopper(by, leastAreaM2);
  if (is === 'enough') return { is: 'met', at, because: { key: 'thick' }, ...figure };
  if (is === 'thin') return { is: 'not met', at, because: { key: 'thin' }, ...figure };
  return { is: 'cannot tell', at, because: { key: is }, settle: { key: copperSettles[is] } };
}
