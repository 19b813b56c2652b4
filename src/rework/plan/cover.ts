import type { StudyFinding } from '../../study/study.ts';
import type { WorkEffect } from '../work.ts';
import { moneyOf } from './burden-of.ts';
import { byCost, type Choosing, mayBeDone } from './choosing.ts';
import { harmOf, noLongerFound } from './effect-of.ts';

/** What a set leaves, by what each work clears alone. */
interface Left {
  readonly hazards: number;
  readonly defects: number;
}

/** The sets that a search goes through, and how it judges them. */
interface Cover {
  readonly choosing: Choosing;
  readonly leaves: (set: readonly number[]) => Left;
  readonly isBetter: (set: readonly number[], than: readonly number[]) => boolean;
  /** Candidates that clear a finding in common, in order. */
  readonly rivals: readonly (readonly [number, number])[];
}

/**
 * A set of works judged by what each clears alone, without trying them together: where a search over many works begins.
 * Grown step by step, freed of what it can spare, then exchanged for as long as that makes it cheaper or leaves less. What
 * hazards and defects have folded under them counts too, since it stands once they are gone.
 */
export function coverOf(choosing: Choosing): readonly number[] {
  const cover = coverWith(choosing);
  let best = settled([], cover);
  for (let next = betterThan(best, cover); next !== null; next = betterThan(best, cover)) best = next;
  return best;
}

function coverWith(choosing: Choosing): Cover {
  const { candidates, alone } = choosing;
  const cleared = new Map(candidates.map((i) => [i, clearedBy(alone.get(i))]));
  const all = [...new Set([...cleared.values()].flat())];
  const numberOf = new Map(all.map((f, n) => [f, n]));
  const numbers = new Map([...cleared].map(([i, of]) => [i, of.map((f) => numberOf.get(f)!)]));
  const leaves = (set: readonly number[]): Left => {
    const isGone = new Uint8Array(all.length);
    for (const i of set) for (const n of numbers.get(i)!) isGone[n] = 1;
    const hazards = all.filter((f, n) => isGone[n] === 0 && f.severity === 'hazard').length;
    return { hazards, defects: isGone.filter((is) => is === 0).length - hazards };
  };
  const cheaper = byCost(choosing);
  const share = (a: number, b: number) => numbers.get(a)!.some((n) => numbers.get(b)!.includes(n));
  return {
    choosing,
    leaves,
    isBetter: (set, than) => {
      const danger = compareLeft(leaves(set), leaves(than));
      return danger < 0 || (danger === 0 && cheaper(set, than) < 0);
    },
    rivals: candidates.flatMap((a) => candidates.filter((b) => a < b && share(a, b)).map((b) => [a, b] as const)),
  };
}

/** Nothing of a work that brings something bad alone: it is thought of when the set is tried together. */
function clearedBy(effect: WorkEffect | undefined): readonly StudyFinding[] {
  if (effect === undefined || harmOf(effect).length > 0) return [];
  return noLongerFound(effect).filter((f) => f.severity !== 'advice');
}

function compareLeft(a: Left, b: Left): number {
  return a.hazards - b.hazards || a.defects - b.defects;
}

/** With one work more, or two rivals, or one taken out, and then settled: the first that is better; null where none is. */
function betterThan(set: readonly number[], cover: Cover): readonly number[] | null {
  const { choosing, rivals, isBetter } = cover;
  const { candidates, trials } = choosing;
  const out = candidates.filter((i) => !set.includes(i)).map((i) => [i]);
  const pairs = rivals.filter((pair) => pair.every((i) => !set.includes(i)));
  for (const more of [...out, ...pairs]) {
    const forced = more.flatMap((i) => trials.pool.bundles[i]!);
    // what clashes with the new ones goes
    const kept = set.filter((i) => !forced.some((f) => trials.pool.clashes[i]!.has(f)));
    const next = settled(closed([...kept, ...forced], cover), cover);
    if (isBetter(next, set)) return next;
  }
  return null;
}

/** A set without those works whose needs are not in it. */
function closed(set: readonly number[], { choosing }: Cover): readonly number[] {
  const { bundles } = choosing.trials.pool;
  const has = new Set(set);
  return [...has].filter((i) => bundles[i]!.every((needed) => has.has(needed))).sort((a, b) => a - b);
}

/** Freed of what it can spare, dearest first, then grown, then freed again. */
function settled(from: readonly number[], cover: Cover): readonly number[] {
  return spared(grown(spared(from, cover), cover), cover);
}

/** Adds what clears most for its cost, hazards first, until nothing more is cleared. */
function grown(from: readonly number[], cover: Cover): readonly number[] {
  const { choosing, leaves } = cover;
  let set = from;
  for (;;) {
    const now = leaves(set);
    const steps = choosing.candidates.flatMap((i) => {
      if (set.includes(i)) return [];
      const next = [...new Set([...set, ...choosing.trials.pool.bundles[i]!])].sort((a, b) => a - b);
      const then = leaves(next);
      if (compareLeft(then, now) >= 0 || !mayBeDone(choosing, next)) return [];
      const cost = next.filter((n) => !set.includes(n)).reduce((sum, n) => sum + costOf(choosing, n), 0);
      return [{ next, hazards: (now.hazards - then.hazards) / cost, defects: (now.defects - then.defects) / cost }];
    });
    if (steps.length === 0) return set;
    set = steps.reduce((a, b) => ((b.hazards - a.hazards || b.defects - a.defects) > 0 ? b : a)).next;
  }
}

/** Takes out what can be spared, dearest first. */
function spared(from: readonly number[], cover: Cover): readonly number[] {
  const { choosing, leaves } = cover;
  let set = from;
  for (const i of [...from].sort((a, b) => costOf(choosing, b) - costOf(choosing, a) || b - a)) {
    const less = set.filter((n) => n !== i);
    if (mayBeDone(choosing, less) && compareLeft(leaves(less), leaves(set)) <= 0) set = less;
  }
  return mayBeDone(choosing, set) ? set : spared(set.slice(0, -1), cover);
}

/** Never 0, so that what costs nothing can be compared. */
function costOf({ costs, totals }: Choosing, i: number): number {
  return moneyOf(costs[i]!, totals.by) + 1e-9 * (1 + totals.cost);
}
