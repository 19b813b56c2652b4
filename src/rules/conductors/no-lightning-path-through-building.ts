import type { Electrode, Site } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Part of the building that serves as an electrode beside: nobody drove it there. */
const ofBuilding: readonly string[] = ['water pipe', 'concrete-encased', 'structural steel'];

export const noLightningPathThroughBuilding = rule({
  id: 'no-lightning-path-through-building',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: '5.3', provenance: 'memory' },
  needs: ['sections', 'conductors', 'site'],
  check({ sections, conductors, site }) {
    const indoorRods = site.electrodes.filter(
      (e) => isIndoors(e, site) && e.present !== 'no' && !ofBuilding.includes(e.kind),
    );
    const paths = conductors.filter((c) => c.lightningPath || c.role === 'electrode tie');
    if (paths.length === 0 && indoorRods.length === 0) return nothingThere({ sections }, 'conductors');
    return [
      ...indoorRods.map((e): Verdict => ({ is: 'not met', at: [e.id], because: { key: 'rod indoors' } })),
      ...paths.map((c): Verdict => {
        if (c.indoors === 'yes') return { is: 'not met', at: [c.id], because: { key: 'runs indoors' } };
        if (c.indoors === 'no') return { is: 'met', at: [c.id], because: { key: 'outside' } };
        return { is: 'cannot tell', at: [c.id], because: { key: 'nobody said' }, settle: { key: 'say where' } };
      }),
    ];
  },
});

/**
 * Typed as inside, which is read as the one building where there is one. Of several the id says at which of them an electrode
 * goes into the soil, as separate-building-electrode asks for it: outdoors for all that is known.
 */
function isIndoors({ where }: Electrode, { buildings }: Site): boolean {
  return where === 'inside' || (buildings.length === 1 && where === buildings[0]!.id);
}
