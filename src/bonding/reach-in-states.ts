import type { Site } from '../site/site.ts';
import { applyState } from './apply-state.ts';
import type { Reach } from './bonding.ts';
import { reachOf } from './reach.ts';
import { siteIndex } from './site-index.ts';

/** What still reaches each box in one state; `state` null: as typed. */
export interface ReachInState {
  readonly state: string | null;
  readonly reach: readonly Reach[];
}

/** The site as typed, then each of its states in the order of the file. */
export function reachInStates(typed: Site): readonly ReachInState[] {
  return [null, ...typed.states.map((s) => s.id)].map((state) => {
    const { site, openings } = applyState(typed, state);
    return { state, reach: reachOf(siteIndex(site), openings) };
  });
}
