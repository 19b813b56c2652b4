import type { SiteChange } from '../../site/change.ts';
import type { Region, Site } from '../../site/site.ts';
import { isAmerican } from '../code-sets/is-american.ts';
import { freeId } from './free-id.ts';

/** 6 AWG copper: NFPA 70 810.21(J); 16 mm2 copper: IEC 60728-11, antenna earthing (both second-hand). */
const usual = { us: '6 AWG copper', iec: '16 mm2 copper' };

export function usualWire(region: Region): string {
  return isAmerican(region) ? usual.us : usual.iec;
}

/**
 * A bonding conductor between two parts, still to be built, of the size that a region asks between electrodes. It stands on
 * clamps that may lie in soil. Nothing where the other end is not known.
 */
export function addBond(
  site: Site,
  region: Region,
  from: string,
  to: string | null,
): { readonly change?: readonly SiteChange[] } {
  if (to === null || from === to) return {};
  const id = freeId(site, `bond-${from}-${to}`);
  const fields = {
    from,
    to,
    wire: usualWire(region),
    joints: ['exothermic weld', 'exothermic weld'],
    known: 'planned',
  };
  return { change: [{ is: 'add', section: 'conductors', id, fields }] };
}
