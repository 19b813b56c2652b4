import type { Part, Site } from '../site/site.ts';
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
  return { site: loseParts(site, state.lost), openings: state.open };
}

/** The same site with these parts gone. */
export function loseParts(site: Site, lost: readonly string[]): Site {
  if (lost.length === 0) return site;
  const gone = new Set(lost);
  const without = <P extends Part>(parts: readonly P[]): readonly P[] =>
    parts.map((part) => (gone.has(part.id) ? { ...part, present: 'no' } : part));
  return {
    ...site,
    electrodes: without(site.electrodes),
    supports: without(site.supports),
    antennas: without(site.antennas),
    bars: without(site.bars),
    arresters: without(site.arresters),
    equipment: without(site.equipment),
    lines: without(site.lines),
    conductors: without(site.conductors),
    joints: without(site.joints),
    metalwork: without(site.metalwork),
  };
}
