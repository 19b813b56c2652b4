import type { Group } from '../../bonding/bonding.ts';
import type { Facts } from '../../facts/facts.ts';
import type { Interval } from '../../units/interval.ts';
import { systemOhm } from '../earth-resistance/system-ohm.ts';
import type { OwnPlace } from './own-places.ts';

type Asked = Pick<Facts, 'site' | 'bonding' | 'electrodes' | 'earth'>;

/**
 * The earth of the whole site: of the system of the service, else of the only one there is. Where the service is not known
 * and the electrodes hang in several systems, each of them with nothing known: which of them is asked nobody can say.
 */
export function sitePlaces(facts: Asked): readonly OwnPlace[] {
  const { groups, service } = facts.bonding;
  const withElectrodes = groups.filter((g) => g.electrodes.length > 0);
  const ofService = withElectrodes.find((g) => g.hasService === true);
  if (ofService !== undefined) return [placeOf(ofService.electrodes, ohmOf(ofService, facts))];
  // its own system has no electrode in the file: what stands apart says nothing of it
  if (service.part !== null) return [{ ...placeOf([service.part], null), of: 'noEarth' }];
  const [only, ...others] = withElectrodes;
  if (only !== undefined && others.length === 0) return [placeOf(only.electrodes, ohmOf(only, facts))];
  return withElectrodes.map((g) => ({ ...placeOf(g.electrodes, null), of: 'severalEarths' }));
}

function placeOf(at: readonly string[], resistance: Interval | null): OwnPlace {
  return { at, figures: { resistance }, words: {}, of: 'earth' };
}

/** As measured with everything joined, else worked out. */
function ohmOf(group: Group, facts: Asked): Interval | null {
  const system = systemOhm(facts, Number.NEGATIVE_INFINITY);
  if (system?.how === 'measured') return system.ohm;
  return system?.how === 'over range'
    ? null
    : (facts.earth.groups.find((g) => g.id === group.id)?.resistanceOhm ?? null);
}
