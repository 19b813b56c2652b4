import type { ComparedParts } from '../compare/comparison.ts';
import type { Study, StudyGuy, StudyPart } from '../study/study.ts';
import type { Fate } from './compare-fate.ts';
import { partOfPoint } from './item-numbers.ts';
import type { Ground } from './plan-scale.ts';

/** Both studies as one that can be drawn: everything after, and what is gone behind it section by section. */
export interface Union {
  /** Findings are left out: a drawing of two studies flags none. */
  readonly study: Study;
  /** By id in the union. */
  readonly fates: ReadonlyMap<string, Fate>;
  /** Ids before to ids in the union. */
  readonly idOfBefore: (point: string) => string;
  /** Things that stand elsewhere now, and where they stood. */
  readonly moved: readonly { readonly id: string; readonly from: Ground }[];
}

type Placed = { readonly id: string; readonly at: readonly number[] | null };

const leastMoveM = 0.1;

/**
 * One study of all that was and all that is. Something gone keeps its id; where another part bears that id now, it is
 * called `id (before)`. What it was joined to is named as it is called now. Pieces of a conductor that was cut are changed.
 */
export function unionOf(before: Study, after: Study, parts: ComparedParts): Union {
  const now = namesNow(before, after, parts);
  const taken = new Set([...placedIn(after).map((p) => p.id), ...after.joints.map((j) => j.id)]);
  const rename = (id: string): string => now.get(id) ?? (taken.has(id) ? `${id} (before)` : id);
  const point = (at: string): string => {
    const id = partOfPoint(at);
    return now.get(at) ?? rename(id) + at.slice(id.length);
  };
  const study = joined(before, after, new Set(now.keys()), point);
  const changed = changedIds(before, after, parts);
  const came = new Set(parts.changed.filter((c) => c.presence === 'came').map((c) => c.after.id));
  const went = new Set(parts.changed.filter((c) => c.presence === 'went').map((c) => c.after.id));
  const kept = new Set([...now.values(), ...changed]);
  const fateOf = (id: string): Fate => {
    if (!taken.has(id) || went.has(id)) return 'removed';
    if (!kept.has(id) || came.has(id)) return 'added';
    return changed.has(id) ? 'changed' : 'same';
  };
  const ids = placedIn(study).map((p) => p.id);
  const fates = new Map(ids.map((id) => [id, fateOf(id)]));
  return { study, fates, idOfBefore: point, moved: movedOf(before, after, now) };
}

/** Ids before to ids after, guys and conductors that were joined to one included. */
function namesNow(before: Study, after: Study, parts: ComparedParts): ReadonlyMap<string, string> {
  const guys = new Set(after.guys.map((g) => g.id));
  return new Map([
    ...before.guys.filter((g) => guys.has(g.id)).map((g) => [g.id, g.id] as const),
    ...parts.joined.flatMap((j) => j.before.map((id) => [id, j.after] as const)),
    ...parts.pairs.map((p) => [p.before, p.after] as const),
  ]);
}

/** Ids after of what is the same thing and not as it was. */
function changedIds(before: Study, after: Study, parts: ComparedParts): ReadonlySet<string> {
  const was = new Map(before.guys.map((g) => [g.id, JSON.stringify(g)]));
  const guys = after.guys.filter((g) => was.has(g.id) && was.get(g.id) !== JSON.stringify(g)).map((g) => g.id);
  const cut = [...parts.splits.flatMap((s) => s.after), ...parts.joined.map((j) => j.after)];
  return new Set([...parts.changed.map((c) => c.after.id), ...cut, ...guys]);
}

function joined(before: Study, after: Study, kept: ReadonlySet<string>, point: (at: string) => string): Study {
  const gone = <P extends { readonly id: string }>(list: readonly P[]) => list.filter((p) => !kept.has(p.id));
  const parts = gone(before.parts).map(
    (p): StudyPart => ({ ...p, id: point(p.id), on: p.on === null ? null : point(p.on) }),
  );
  const guys = gone(before.guys).map((g): StudyGuy => ({ ...g, id: point(g.id), support: point(g.support) }));
  const conductors = gone(before.conductors).map((c) => ({
    ...c,
    id: point(c.id),
    from: point(c.from),
    to: point(c.to),
  }));
  const lines = gone(before.lines).map((l) => ({
    ...l,
    id: point(l.id),
    stops: l.stops.map((s) => stopNow(s, point)),
  }));
  const joints = gone(before.joints).map((j) => ({ ...j, id: point(j.id), holds: j.holds.map(point) }));
  const buildings = before.buildings.filter((b) => !after.buildings.some((a) => a.id === b.id));
  return {
    ...after,
    parts: [...after.parts, ...parts],
    guys: [...after.guys, ...guys],
    conductors: [...after.conductors, ...conductors],
    lines: [...after.lines, ...lines],
    joints: [...after.joints, ...joints],
    buildings: [...after.buildings, ...buildings],
    findings: [],
  };
}

/** `bond tower@48 ft` and the like keep their first word. */
function stopNow(stop: string, point: (at: string) => string): string {
  const [, word, at] = /^(bond|bend|plug) (.+)$/.exec(stop) ?? [];
  return word === undefined ? point(stop) : `${word} ${point(at!)}`;
}

function placedIn(study: Study): readonly Placed[] {
  return [
    ...study.parts.map((p) => ({ id: p.id, at: p.routeM.length > 1 ? null : p.positionM })),
    ...study.guys.map((g) => ({ id: g.id, at: g.anchorM })),
  ];
}

function movedOf(before: Study, after: Study, now: ReadonlyMap<string, string>): Union['moved'] {
  const places = new Map(placedIn(after).map((p) => [p.id, p.at]));
  return placedIn(before).flatMap(({ id, at }) => {
    const to = now.get(id);
    const there = to === undefined ? null : (places.get(to) ?? null);
    if (to === undefined || at === null || there === null) return [];
    const far = Math.hypot(at[0]! - there[0]!, at[1]! - there[1]!) > leastMoveM;
    return far ? [{ id: to, from: [at[0]!, at[1]!] as const }] : [];
  });
}

/** Names of what was added, removed and changed, for those who cannot see a drawing. */
export function fateLists(union: Union, nothing: string): Readonly<Record<'added' | 'removed' | 'changed', string>> {
  const list = (fate: Fate) => {
    const ids = [...union.fates].filter(([, f]) => f === fate).map(([id]) => id);
    return ids.length === 0 ? nothing : ids.join(', ');
  };
  return { added: list('added'), removed: list('removed'), changed: list('changed') };
}
