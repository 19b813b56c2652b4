import type { SiteChange } from '../../study/try-change.ts';
import { byCodeUnit } from '../../units/by-code-unit.ts';
import type { Work } from '../work.ts';
import { firstsOf } from './comes-before.ts';
import { type EndsOf, laidTo, movedBars } from './landed-on.ts';

/** Works to choose from, each after what it needs, with what goes together and what does not. */
export interface Pool {
  readonly works: readonly Work[];
  /** Of each work: itself and all that must be done before it, in order. */
  readonly bundles: readonly (readonly number[])[];
  /** Of each work: those that change one thing of the file in another way, and where one moves what the other lays metal to. */
  readonly clashes: readonly ReadonlySet<number>[];
  /** Of each work: those that come before it where both are done; it can be done without them. */
  readonly firsts: readonly (readonly number[])[];
}

/** Ordered by id; what a work needs stands before it. A need that is not among the works leaves the work out. */
export function poolOf(works: readonly Work[], endsOf: EndsOf = () => []): Pool {
  const ordered = inOrder(works);
  const numberOf = new Map(ordered.map((w, i) => [w.id, i]));
  const bundles: (readonly number[])[] = [];
  for (const [i, work] of ordered.entries()) {
    const needed = work.needs.flatMap((id) => bundles[numberOf.get(id)!]!);
    bundles.push([...new Set([...needed, i])].sort((a, b) => a - b));
  }
  return { works: ordered, bundles, clashes: clashesOf(ordered), firsts: firstsOf(ordered, bundles, endsOf) };
}

function inOrder(works: readonly Work[]): readonly Work[] {
  const left = [...works].sort((a, b) => byCodeUnit(a.id, b.id));
  const done = new Set<string>();
  const ordered: Work[] = [];
  for (;;) {
    const at = left.findIndex((w) => w.needs.every((id) => done.has(id)));
    if (at < 0) return ordered;
    const [work] = left.splice(at, 1);
    done.add(work!.id);
    ordered.push(work!);
  }
}

function clashesOf(works: readonly Work[]): readonly ReadonlySet<number>[] {
  const sides = works.map(({ changes }) => ({
    says: sayingsOf(changes),
    moved: movedBars(changes),
    laid: laidTo(changes),
  }));
  const clashes = works.map(() => new Set<number>());
  for (const [a, one] of sides.entries()) {
    for (const [b, other] of sides.slice(0, a).entries()) {
      const isLaidToMoved = meet(one.moved, other.laid) || meet(other.moved, one.laid);
      if (!isLaidToMoved && !saysOtherwise(one.says, other.says)) continue;
      clashes[a]!.add(b);
      clashes[b]!.add(a);
    }
  }
  return clashes;
}

/** What changes say, by what they say it of. */
function sayingsOf(changes: readonly SiteChange[]): ReadonlyMap<string, string> {
  return new Map(
    changes.map((c) => {
      const about = JSON.stringify([c.section, c.id, c.is === 'set' ? c.field : null]);
      const says = c.is === 'set' ? c.value : c.is === 'add' ? c.fields : null;
      return [about, JSON.stringify([c.is, says])];
    }),
  );
}

/** A field set in a part that the other takes out is no clash here: the edit itself refuses it. */
function saysOtherwise(a: ReadonlyMap<string, string>, b: ReadonlyMap<string, string>): boolean {
  return [...a].some(([about, says]) => b.has(about) && b.get(about) !== says);
}

function meet(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  return a.size > 0 && [...a].some((id) => b.has(id));
}

/** Changes of several works, one after the other; what two of them say alike, or what is done already, is done once. */
export function changesOf(works: readonly Work[], done: readonly SiteChange[] = []): readonly SiteChange[] {
  const isDone = new Set(done.map((c) => JSON.stringify(c)));
  const left = works.flatMap((w) => w.changes).map((c) => [JSON.stringify(c), c] as const);
  return [...new Map(left.filter(([says]) => !isDone.has(says))).values()];
}

/** Whether a set of works holds what each of them needs, and no two that clash. */
export function isPossible(pool: Pool, set: readonly number[]): boolean {
  const has = new Set(set);
  for (const i of set) {
    for (const needed of pool.bundles[i]!) if (!has.has(needed)) return false;
    for (const clashing of pool.clashes[i]!) if (has.has(clashing)) return false;
  }
  return true;
}
