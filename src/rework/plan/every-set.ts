import type { Remaining } from '../work.ts';
import { byCost, type Choosing, mayBeDone } from './choosing.ts';
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
    if (trial.effect !== null) known.push({ set, left: trial.effect.after });
    return trial;
  }
  const most = yield* tryLargest(sets, tryOut);
  for (const goal of [most, null]) {
    const found = yield* cheapest(sets, goal, known, tryOut);
    if (found !== null) return found;
  }
  return [];
}

/** The largest sets, and each without one of its works: they tell early which works cannot be spared. Returns the best of them. */
function* tryLargest(
  sets: readonly (readonly number[])[],
  tryOut: (set: readonly number[]) => Trying<SetTrial>,
): Trying<Remaining | null> {
  let best: Remaining | null = null;
  const holds = (a: readonly number[], b: readonly number[]) => a !== b && isWithin(b, a);
  for (const set of sets.filter((s) => !sets.some((other) => holds(other, s)))) {
    const { effect, isHarmless } = yield* tryOut(set);
    if (isHarmless && effect !== null && (best === null || compareDanger(effect.after, best) < 0)) best = effect.after;
    for (const smaller of sets.filter((s) => s.length === set.length - 1 && isWithin(s, set))) yield* tryOut(smaller);
  }
  return best;
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
