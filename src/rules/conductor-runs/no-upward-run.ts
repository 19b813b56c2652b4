import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { walkedConductors } from './walked.ts';

/** Ours: a rise that a tape measure shows. */
const riseM = 0.05;

export const noUpwardRun = rule({
  id: 'no-upward-run',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: {
    document: 'MIL-HDBK-419A; UFGS 13100A; NFPA 780',
    edition: 'vol. II',
    clause: 'down conductors; 4.9.4',
    provenance: 'read',
  },
  needs: ['sections', 'conductors', 'site'],
  check({ sections, conductors, site }) {
    const asked = walkedConductors(conductors, (c) => c.part.rises === 'yes');
    if (asked.length === 0) return nothingThere({ sections }, 'conductors');
    const electrodes = new Set(site.electrodes.map((e) => e.id));
    return asked.map((c): Verdict => {
      const at = [c.id];
      const rises = c.part.rises === 'yes' || c.part.rises === 'no' ? c.part.rises : byRoute(c, electrodes);
      if (rises === 'no') return { is: 'met', at, because: { key: 'down' } };
      if (rises === 'yes') return { is: 'not met', at, because: { key: 'up' } };
      return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'walk' } };
    });
  },
});

/** By the heights of a typed route towards its electrode; a route on the plan alone says nothing. */
function byRoute({ part }: ConductorFacts, electrodes: ReadonlySet<string>): Facts['conductors'][number]['inSoil'] {
  const heights = (part.route ?? []).map((p) => p.position?.[2] ?? null);
  if (heights.length < 2 || heights.includes(null) || heights.every((h) => h === 0)) return 'unknown';
  const isDown = electrodes.has(part.to.part ?? '');
  if (!isDown && !electrodes.has(part.from.part ?? '')) return 'unknown';
  const towards = isDown ? heights : [...heights].reverse();
  return towards.slice(1).some((h, i) => h! > towards[i]! + riseM) ? 'yes' : 'no';
}
