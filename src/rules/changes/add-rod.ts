import type { Facts } from '../../facts/facts.ts';
import type { SiteChange } from '../../site/change.ts';
import { addBond, usualWire } from './add-bond.ts';
import { freeId } from './free-id.ts';

/**
 * The least length that NFPA 70, 250.52(A)(5) has, and in Canada the 3 m of the Canadian Electrical Code, which asks two of
 * them at least 3 m apart (from memory); elsewhere one that is enough for an antenna by itself (IEC 60728-11, second-hand),
 * with the copper that IEC 60364-5-54 asks.
 */
const rods = {
  us: { length: '8 ft', diameter: '5/8 in', metal: 'copper-clad steel' },
  ca: { length: '10 ft', diameter: '5/8 in', metal: 'copper-clad steel' },
  iec: { length: '2.5 m', diameter: '16 mm', metal: 'copper-clad steel', coating: '0.25 mm' },
};

/** One more rod of the size that a region asks, bonded to a part, and to the service where it is named; all still to be built. */
export function addRod(
  facts: Pick<Facts, 'site' | 'header' | 'isAmerican'>,
  beside: string,
  service: string | null = null,
): readonly SiteChange[] {
  const rod = freeId(facts.site, `rod-${beside}`);
  const wire = freeId(facts.site, `bond-${beside}-${rod}`);
  const joints = ['exothermic weld', 'exothermic weld'];
  return [
    {
      is: 'add',
      section: 'electrodes',
      id: rod,
      fields: { kind: 'rod', ...usualRod(facts), known: 'planned' },
    },
    {
      is: 'add',
      section: 'conductors',
      id: wire,
      fields: { from: beside, to: rod, wire: usualWire(facts), joints, known: 'planned' },
    },
    ...(addBond(facts, rod, service).change ?? []),
  ];
}

function usualRod({ header, isAmerican }: Pick<Facts, 'header' | 'isAmerican'>) {
  if (header.region === 'ca') return rods.ca;
  return isAmerican ? rods.us : rods.iec;
}
