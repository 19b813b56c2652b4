import type { BoxFacts, Facts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import type { Electrode, Part } from '../../site/site.ts';
import { neighbours, reachedFrom } from '../neighbours.ts';
import { passingCases } from '../passing-cases.ts';

type Asked = Pick<Facts, 'bonding' | 'site'>;

/**
 * The first electrodes that permanent metal leads to from a panel, never over the service or what is in another building;
 * `perhaps`: over what may be there or may be one metal too. `shared`: the service’s own wire lands on it as well, and nobody
 * said at which building it lies; one that lies at another building is left out.
 */
export function electrodesAtBuilding(
  panel: BoxFacts,
  { bonding, site }: Asked,
  how: 'certain' | 'perhaps',
): readonly { readonly electrode: Electrode; readonly shared: boolean }[] {
  const index = partIndex(site);
  const { part: service } = bonding.service;
  const isElsewhere = (id: string) => isOther(index.whereOf(id), panel.where);
  const goesOn = (id: string) => {
    const part = index.get(id);
    return part !== undefined && id !== service && !isElsewhere(id) && passesOn(part, how);
  };
  const ties = bonding.ties.filter((t) => t.kind === 'metal' && (t.is === 'there' || how === 'perhaps'));
  const onward = ties.filter(({ a, b }) => goesOn(a) && goesOn(b)).map(({ a, b }) => [a, b] as const);
  const reached = reachedFrom([panel.id], neighbours(onward));
  const landed = new Set(ties.flatMap(({ a, b }) => [...(reached.has(a) ? [b] : []), ...(reached.has(b) ? [a] : [])]));
  const ofService = new Set(ties.flatMap(({ a, b }) => (a === service ? [b] : b === service ? [a] : [])));
  return site.electrodes
    .filter((e) => landed.has(e.id) && !isElsewhere(e.id))
    .map((e) => ({ electrode: e, shared: ofService.has(e.id) && e.where !== panel.where }));
}

/** In a building that is known and is not this one. */
function isOther(where: string | null, here: string | null): boolean {
  return where !== null && where !== 'outside' && here !== null && where !== here;
}

function passesOn(part: Part, how: 'certain' | 'perhaps'): boolean {
  if (part.section === 'electrodes') return false;
  if (part.section === 'equipment') return passingCases.includes(part.kind);
  if (part.section === 'metalwork') return part.continuous === 'yes' || (how === 'perhaps' && part.continuous !== 'no');
  return true;
}
