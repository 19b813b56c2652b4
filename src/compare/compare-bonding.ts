import type { Study } from '../study/study.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';
import { bothSides } from './both-sides.ts';
import type { GroupRow, Sides, UnbondedRow, WeakPoint, WeakPointRow } from './comparison.ts';
import type { Names } from './matching/names.ts';
import { pairRows } from './pair-rows.ts';
import { standingOf } from './standing.ts';

/** Weak points side by side, by where they are as after calls it: gone, new, or with other losses. */
export function compareWeakPoints(before: Study, after: Study, names: Names): readonly WeakPointRow[] {
  const rows = pairRows(
    before.bonding.weakPoints,
    after.bonding.weakPoints,
    (w) => names.toAfter(w.at),
    (w) => w.at,
  );
  return rows.map((point) => {
    const at = bothSides(point, (w) => w.at);
    return { at, standing: standingOf(at, isSameWeakPoint(point, names)), point };
  });
}

function isSameWeakPoint({ before: b, after: a }: Sides<WeakPoint | null>, names: Names): boolean {
  if (b === null || a === null) return false;
  const isLosses = (['losesService', 'losesEarth', 'electrodesLost'] as const).every((list) =>
    isSameList(b[list].map(names.toAfter), a[list]),
  );
  return isLosses && b.noticed === a.noticed && b.certain === a.certain;
}

export function isSameList(b: readonly string[], a: readonly string[]): boolean {
  const [x, y] = [[...b].sort(), [...a].sort()];
  return x.length === y.length && x.every((id, i) => id === y[i]);
}

/** Electrodes outside the service's group, and those of which that cannot be told. */
export function compareUnbonded(before: Study, after: Study, names: Names): readonly UnbondedRow[] {
  const rows = pairRows(
    outside(before),
    outside(after),
    (e) => names.toAfter(e.id),
    (e) => e.id,
  );
  return rows.map((row) => {
    const [id, is] = [bothSides(row, (e) => e.id), bothSides(row, (e) => e.is)];
    return { id, standing: standingOf(id, is.before === is.after), is };
  });
}

function outside({ bonding }: Study) {
  const unbonded = (bonding.unbondedElectrodes ?? []).map((id) => ({ id, is: 'unbonded' as const }));
  const known = new Set(unbonded.map((e) => e.id));
  const perhaps = bonding.perhapsUnbonded.map((p) => ({ id: p.electrode, is: 'perhaps' as const }));
  return [...unbonded, ...perhaps.filter((e) => !known.has(e.id))];
}

type Group = Study['bonding']['groups'][number];

/** Groups side by side: that of the service with that of the service, the others with those they share most parts with. */
export function compareGroups(before: Study, after: Study, names: Names): readonly GroupRow[] {
  const was = before.bonding.groups.map((group) => ({ group, parts: group.parts.map(names.toAfter) }));
  const is = after.bonding.groups.map((group) => ({ group, parts: [...group.parts] }));
  const groupOf = new Map(is.flatMap((a) => a.parts.map((id) => [id, a] as const)));
  const candidates = was.flatMap((b) => {
    const shared = new Map<Members, number>();
    for (const a of b.parts.map((id) => groupOf.get(id))) if (a !== undefined) shared.set(a, (shared.get(a) ?? 0) + 1);
    return [...shared].map(([a, count]) => ({ b, a, shared: count, key: keyOf(b, a) }));
  });
  const isService = (c: (typeof candidates)[number]) =>
    Number(c.b.group.hasService === true && c.a.group.hasService === true);
  const ranked = candidates.sort(
    (x, y) => isService(y) - isService(x) || y.shared - x.shared || byCodeUnit(x.key, y.key),
  );
  const used = new Set<Group>();
  const pairs = ranked.flatMap(({ b, a }) => {
    if (used.has(b.group) || used.has(a.group)) return [];
    used.add(b.group).add(a.group);
    return [{ before: b, after: a }];
  });
  const rows = [
    ...pairs,
    ...was.filter((b) => !used.has(b.group)).map((b) => ({ before: b, after: null })),
    ...is.filter((a) => !used.has(a.group)).map((a) => ({ before: null, after: a })),
  ];
  return rows.map((sides) => groupRow(sides, names)).sort((x, y) => byCodeUnit(placeOf(x, names), placeOf(y, names)));
}

interface Members {
  readonly group: Group;
  /** As after calls them. */
  readonly parts: readonly string[];
}

const keyOf = (b: Members, a: Members) => JSON.stringify([[...b.parts].sort(), [...a.parts].sort()].sort());
const placeOf = ({ id }: GroupRow, names: Names) => id.after ?? names.toAfter(id.before!);

function groupRow(sides: Sides<Members | null>, names: Names): GroupRow {
  const id = bothSides(sides, (m) => m.group.id);
  const [b, a] = [sides.before, sides.after];
  const [were, are] = [new Set(b?.parts), new Set(a?.parts)];
  const won = [...are].filter((part) => !were.has(part));
  const lost = (b?.group.parts ?? []).filter((part) => !are.has(names.toAfter(part)));
  const hasService = bothSides(sides, (m) => m.group.hasService);
  const isSame = won.length + lost.length === 0 && hasService.before === hasService.after;
  return {
    id,
    standing: standingOf(id, isSame),
    hasService,
    electrodes: { before: b?.group.electrodes ?? [], after: a?.group.electrodes ?? [] },
    parts: { before: b?.parts.length ?? 0, after: a?.parts.length ?? 0 },
    won,
    lost,
  };
}
