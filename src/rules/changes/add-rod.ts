import type { SiteChange } from '../../site/change.ts';
import type { Region, Site } from '../../site/site.ts';
import { usualWire } from './add-bond.ts';
import { freeId } from './free-id.ts';

/** One more rod of the least length that NFPA 70, 250.52(A)(5) has, bonded to a part; both still to be built. */
export function addRod(site: Site, region: Region, beside: string): readonly SiteChange[] {
  const rod = freeId(site, `rod-${beside}`);
  const wire = freeId(site, `bond-${beside}-${rod}`);
  const joints = ['exothermic weld', 'exothermic weld'];
  return [
    {
      is: 'add',
      section: 'electrodes',
      id: rod,
      fields: { kind: 'rod', length: '8 ft', diameter: '5/8 in', metal: 'copper-clad steel', known: 'planned' },
    },
    {
      is: 'add',
      section: 'conductors',
      id: wire,
      fields: { from: beside, to: rod, wire: usualWire(region), joints, known: 'planned' },
    },
  ];
}
