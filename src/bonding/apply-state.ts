import type { Part, Site, State } from '../site/site.ts';
import { loseParts } from './lose-parts.ts';
import type { Opening } from './opening.ts';

/** A site in one of its states, with the places at which the state takes lines off. */
export interface SiteInState {
  readonly site: Site;
  readonly openings: readonly Opening[];
}

/**
 * The site as it is in a state: fields set, lost parts absent, lines taken off. null is the site as typed. Throws RangeError for a state
 * that the site has not.
 */
export function applyState(site: Site, stateId: string | null): SiteInState {
  if (stateId === null) return { site, openings: [] };
  const state = site.states.find((s) => s.id === stateId);
  if (state === undefined) throw new RangeError(`the site has no state ${stateId}`);
  const changed = changeParts(site, state.changed ?? []);
  return { site: loseParts(changed, state.lost), openings: [...state.open, ...lostPlugs(site, state)] };
}

/** The parts that a state sets fields of, as they are then. */
function changeParts(site: Site, changed: readonly Part[]): Site {
  if (changed.length === 0) return site;
  const byId = new Map(changed.map((part) => [part.id, part]));
  const asThen = <P extends Part>(parts: readonly P[]): readonly P[] =>
    parts.map((part) => (byId.get(part.id) as P | undefined) ?? part);
  return {
    ...site,
    electrodes: asThen(site.electrodes),
    supports: asThen(site.supports),
    antennas: asThen(site.antennas),
    bars: asThen(site.bars),
    arresters: asThen(site.arresters),
    equipment: asThen(site.equipment),
    lines: asThen(site.lines),
    conductors: asThen(site.conductors),
    joints: asThen(site.joints),
    metalwork: asThen(site.metalwork),
  };
}

/** A plug that is gone leaves its two sides apart. */
function lostPlugs(site: Site, { lost }: State): readonly Opening[] {
  const plugs = site.lines.flatMap(({ path }) => path.flatMap((stop) => (stop.is === 'plug' ? [stop.id] : [])));
  return plugs.filter((id) => lost.includes(id)).map((at) => ({ at, side: null, gapM: null, end: 'unknown' }));
}
