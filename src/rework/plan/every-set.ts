import type { Remaining } from '../work.ts';
import { byCost, type Choosing, mayBeDone } from './choosing.ts';
import { harmOf } from './effect-of.ts';
import { compareDanger } from './remaining-of.ts';
import type { SetTrial, Trying } from './trials.ts';

/** Up to this many works every set of them is gone through. */
export const mostForEverySet = 8;

interface Known {
  readonly set: readonly number[];
  readonly left: Remaining;
}

/**
 * The cheapest set of works that leaves the fewest hazards, then the fewest defects. All sets are gone through, cheapest
 * first. One is not worked out where a set with more works in it is known to leave as much as the best so far: what is added
 * to a site only takes findings away, or it is not proposed.
 */
export function* everySet(choosing: Choosing): Trying<readonly number[]> {
  const sets = setsOf(choosing);
  const known: Known[] = [];
  function* tryOut(set: readonly number[]): Trying<SetTrial> {
    const trial = yield* choosing.trials.of(set, 'together');
    // what brings something new leaves more than a part of it may
    if (trial.effect !== null && trial.isHarmless) known.push({ set, left: trial.effect.after });
    return trial;
  }
  const most = yield* tryLargest(sets, harmfulOf(choosing), tryOut);
  for (const goal of [most, null]) {
    const found = yield* cheapest(sets, goal, known, tryOut);
    if (found !== null) return found;
  }
  return [];
}

/** Works that bring something bad by themselves. */
function harmfulOf({ alone }: Choosing): ReadonlySet<number> {
  return new Set([...alone].filter(([, effect]) => harmOf(effect).length > 0).map(([i]) => i));
}

/**
 * The largest sets, the same without works that are bad by themselves, and each without one of its works: they tell early
 * which works cannot be spared. Returns the least that one of them leaves.
 */
function* tryLargest(
  sets: readonly (readonly number[])[],
  harmful: ReadonlySet<number>,
  tryOut: (set: readonly number[]) => Trying<SetTrial>,
): Trying<Remaining | null> {
  let least: Remaining | null = null;
  const mild = sets.filter((s) => !s.some((i) => harmful.has(i)));
  for (const set of [...largestOf(sets), ...largestOf(mild)]) {
    for (const one of [set, ...sets.filter((s) => s.length === set.length - 1 && isWithin(s, set))]) {
      const { effect, isHarmless } = yield* tryOut(one);
      if (isHarmless && effect !== null && (least === null || compareDanger(effect.after, least) < 0))
        least = effect.after;
    }
  }
  return least;
}

function largestOf(sets: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return sets.filter((set) => !sets.some((other) => other.length > set.length && isWithin(set, other)));
}

/** The first set in order of cost that reaches the goal; without a goal the best of all. */
function* cheapest(
  sets: readonly (readonly number[])[],
  goal: Remaining | null,
  known: readonly Known[],
  tryOut: (set: readonly number[]) => Trying<SetTrial>,
): Trying<readonly number[] | null> {
  let best: Known | null = null;
  for (const set of sets) {
    const over = known.filter((k) => isWithin(set, k.set));
    const leaves = (than: Remaining, orAsMuch: boolean) =>
      over.some(({ left }) => (orAsMuch ? compareDanger(left, than) >= 0 : compareDanger(left, than) > 0));
    if ((goal !== null && leaves(goal, false)) || (best !== null && leaves(best.left, true))) continue;
    const { effect, isHarmless } = yield* tryOut(set);
    if (!isHarmless || effect === null) continue;
    if (goal !== null && compareDanger(effect.after, goal) <= 0) return set;
    if (best === null || compareDanger(effect.after, best.left) < 0) best = { set, left: effect.after };
  }
  return goal === null ? (best?.set ?? null) : null;
}

/** All sets that could be done, cheapest first; the empty one is in. */
function setsOf(choosing: Choosing): readonly (readonly number[])[] {
  const { candidates } = choosing;
  const all = Array.from({ length: 2 ** candidates.length }, (_, bits) =>
    candidates.filter((_, i) => ((bits >> i) & 1) === 1),
  );
  return all.filter((set) => mayBeDone(choosing, set)).sort(byCost(choosing));
}

function isWithin(set: readonly number[], other: readonly number[]): boolean {
  return set.every((i) => other.includes(i));
}
