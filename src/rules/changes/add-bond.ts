import type { Facts } from '../../facts/facts.ts';
import type { SiteChange } from '../../site/change.ts';
import { freeId } from './free-id.ts';

/** 6 AWG copper: NFPA 70 810.21(J); 16 mm2 copper: IEC 60728-11, antenna earthing (both second-hand). */
const usual = { us: '6 AWG copper', iec: '16 mm2 copper' };

export function usualWire({ isAmerican }: Pick<Facts, 'isAmerican'>): string {
  return isAmerican ? usual.us : usual.iec;
}

/**
 * A bonding conductor between two parts, still to be built, of the size that a region asks between electrodes. It stands on
 * clamps that may lie in soil. Nothing where the other end is not known.
 */
export function addBond(
  facts: Pick<Facts, 'site' | 'isAmerican'>,
  from: string,
  to: string | null,
): { readonly change?: readonly SiteChange[] } {
  if (to === null || from === to) return {};
  const id = freeId(facts.site, `bond-${from}-${to}`);
  const fields = {
    from,
    to,
    wire: usualWire(facts),
    joints: ['exothermic weld', 'exothermic weld'],
    known: 'planned',
  };
  return { change: [{ is: 'add', section: 'conductors', id, fields }] };
}
