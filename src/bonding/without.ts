import type { Site, State } from '../site/site.ts';
import { applyState } from './apply-state.ts';
import type { Bonding, Group } from './bonding.ts';
import { bondingOf } from './bonding-of.ts';
import { jointMeant } from './joint-id.ts';
import { jointKinds } from './joint-kinds.ts';
import { siteIndex } from './site-index.ts';

/** What the failure of some joints, conductors and parts at once takes away, by the bonds that are known. */
export interface Without {
  /** Parts that hung together with the service and do not any more; what is lost itself left out. null: nobody knows the service, or there is none. */
  readonly losesService: readonly string[] | null;
  readonly losesEarth: readonly string[];
  /** Of the electrodes that lose the service. */
  readonly electrodesLost: readonly string[];
  /** Of all these, those that a tie which may be there, or a wire nobody traced, perhaps still holds. */
  readonly perhapsHeld: readonly string[];
  readonly groupsBefore: readonly Group[];
  readonly groupsAfter: readonly Group[];
  /** Groups that fall into pieces: parts of each piece that is left, the one with the service first. */
  readonly splits: readonly Split[];
}

export interface Split {
  readonly group: string;
  readonly into: readonly (readonly string[])[];
}

export type FailTrouble = 'no such' | 'absent' | 'not whole';

/** The id under which something can fail: a part, a joint, a guy or a plug. */
export function failingId(site: Site, stateId: string | null, text: string): { readonly id: string } | FailTrouble {
  const { site: then } = applyState(site, stateId);
  const { parts, guys } = siteIndex(then);
  const part = parts.get(text);
  if (part !== undefined) return part.present === 'no' ? 'absent' : { id: text };
  if (guys.has(text) || plugsOf(then).includes(text)) return { id: text };
  const joint = jointMeant(then, text);
  if (joint !== null) return { id: joint };
  const whole = /^[^.@]+/.exec(text)?.[0] ?? '';
  return text !== whole && (parts.has(whole) || guys.has(whole)) ? 'not whole' : 'no such';
}

/** Every name under which something can fail, in order. */
export function failingNames(site: Site, stateId: string | null): readonly string[] {
  const { site: then } = applyState(site, stateId);
  const { parts, guys } = siteIndex(then);
  return [...new Set([...parts.keys(), ...guys.keys(), ...plugsOf(then), ...jointKinds(then).keys()])].sort();
}

const plugsOf = (site: Site) =>
  site.lines.flatMap(({ path }) => path.flatMap((stop) => (stop.is === 'plug' ? [stop.id] : [])));

/** The site with one more thing to a state: what is lost. The state has the id that is returned; as typed stands in for none. */
export function withLost(
  site: Site,
  stateId: string | null,
  lost: readonly string[],
): { readonly site: Site; readonly state: string } {
  const id = stateId ?? asTyped;
  const base = site.states.find((s) => s.id === id) ?? { ...nothing, id };
  const others = site.states.filter((s) => s.id !== id);
  return { site: { ...site, states: [...others, { ...base, lost: [...base.lost, ...lost] }] }, state: id };
}

/** No id of a state: ids hold no blanks. */
const asTyped = 'as typed';

const nothing: Omit<State, 'id'> = {
  says: null,
  open: [],
  set: {},
  changed: [],
  lost: [],
  frozen: 'unknown',
  dry: 'unknown',
  wet: 'unknown',
  source: { line: 1, column: 1 },
};

/** What is lost when these fail at once in one state of the site (null: as typed). */
export function without(site: Site, stateId: string | null, lost: readonly string[]): Without {
  const before = bondingOf(site, stateId).bonding;
  const failed = withLost(site, stateId, lost);
  return compareBonding(before, bondingOf(failed.site, failed.state).bonding);
}

/** The same from what was worked out before and after. */
export function compareBonding(before: Bonding, after: Bonding): Without {
  const left = new Set(after.groupOf.keys());
  const gone = (from: ReadonlySet<string>, to: ReadonlySet<string>) =>
    [...from].filter((id) => left.has(id) && !to.has(id)).sort();
  const losesService = before.service.is === 'known' ? gone(before.serviceBy.bonds, after.serviceBy.bonds) : null;
  const losesEarth = gone(before.earthBy.bonds, after.earthBy.bonds);
  const electrodes = new Set(before.groups.flatMap((g) => g.electrodes));
  const goesOn = (id: string) => after.openEnds.has(after.groupOf.get(id)!);
  const held = [
    ...(losesService ?? []).filter((id) => after.serviceBy.perhaps.has(id) || goesOn(id)),
    ...losesEarth.filter((id) => after.earthBy.perhaps.has(id)),
  ];
  return {
    losesService,
    losesEarth,
    electrodesLost: (losesService ?? []).filter((id) => electrodes.has(id)),
    perhapsHeld: [...new Set(held)].sort(),
    groupsBefore: before.groups,
    groupsAfter: after.groups,
    splits: before.groups.flatMap((group) => splitOf(group, after)),
  };
}

function splitOf(group: Group, after: Bonding): readonly Split[] {
  const pieces = new Map<string, string[]>();
  for (const id of group.parts) {
    const piece = after.groupOf.get(id);
    if (piece === undefined) continue;
    const held = pieces.get(piece);
    if (held === undefined) pieces.set(piece, [id]);
    else held.push(id);
  }
  if (pieces.size < 2) return [];
  const home = after.groups.find((g) => g.hasService === true)?.id;
  const rank = (piece: string) => (piece === home ? 0 : 1);
  const into = [...pieces].sort(([a], [b]) => rank(a) - rank(b) || (a < b ? -1 : 1)).map(([, parts]) => parts);
  return [{ group: group.id, into }];
}
