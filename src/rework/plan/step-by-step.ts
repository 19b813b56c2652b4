import type { StudyFinding } from '../../study/study.ts';
import { moneyOf } from './burden-of.ts';
import { byCost, type Choosing, mayBeDone } from './choosing.ts';
import { coverOf } from './cover.ts';
import { noLongerFound } from './effect-of.ts';
import { compareDanger } from './remaining-of.ts';
import type { SetTrial, Trying } from './trials.ts';

/**
 * Works for a site with many candidates: a set found by what each clears alone, then tried together; what it leaves is
 * sought among the others, what it can spare is taken out, and each is exchanged for a cheaper one that does as much.
 */
export function* stepByStep(choosing: Choosing): Trying<readonly number[]> {
  const begun = yield* harmless(coverOf(choosing), choosing);
  const whole = yield* added(begun, choosing);
  const spared = yield* freed(whole, choosing);
  const cheaper = yield* exchanged(spared, choosing);
  return cheaper === spared ? spared : yield* freed(cheaper, choosing);
}

/** Without works that together bring something new: the latest go first. */
export function* harmless(set: readonly number[], choosing: Choosing): Trying<readonly number[]> {
  for (let now = set; now.length > 0; now = now.slice(0, -1)) {
    const trial = yield* choosing.trials.of(now, 'together');
    if (trial.isHarmless && mayBeDone(choosing, now)) return now;
    for (const i of now) {
      const less = now.filter((n) => n !== i);
      if (mayBeDone(choosing, less) && (yield* choosing.trials.of(less, 'together')).isHarmless) return less;
    }
  }
  return [];
}

/** Adds works for as long as something of a hazard or defect is left and they take some of it away together. */
function* added(from: readonly number[], choosing: Choosing): Trying<readonly number[]> {
  let set = from;
  for (;;) {
    const now = yield* choosing.trials.of(set, 'together');
    if (now.effect === null || now.effect.after.hazards + now.effect.after.defects === 0) return set;
    const next = yield* oneMore(set, now, choosing);
    if (next === null) return set;
    set = next;
  }
}

/** The cheapest work that takes something more away; where none does alone, all of them that could. */
function* oneMore(set: readonly number[], now: SetTrial, choosing: Choosing): Trying<readonly number[] | null> {
  const { trials, candidates } = choosing;
  const left = new Set((now.outlook?.findings ?? []).filter((f) => f.outcome === 'not met').map((f) => f.id));
  const answers = (i: number) => trials.pool.works[i]!.answers.some((id) => left.has(id));
  const others = candidates
    .filter((i) => !set.includes(i) && answers(i))
    .map((i) => [...new Set([...set, ...trials.pool.bundles[i]!])].sort((a, b) => a - b))
    .filter((next) => mayBeDone(choosing, next))
    .sort(byCost(choosing));
  const together = allOf(set, others, choosing);
  // tried first: where all of them do nothing, none of them need be tried
  if (others.length === 0 || !(yield* isBetterThan(now, together, choosing))) return null;
  for (const next of others) if (yield* isBetterThan(now, next, choosing)) return next;
  return together;
}

/** A set with all others in it that go together, in the order given. */
function allOf(set: readonly number[], others: readonly (readonly number[])[], choosing: Choosing): readonly number[] {
  let all = set;
  for (const other of others) {
    const next = [...new Set([...all, ...other])].sort((a, b) => a - b);
    if (mayBeDone(choosing, next)) all = next;
  }
  return all;
}

function* isBetterThan(now: SetTrial, set: readonly number[], { trials }: Choosing): Trying<boolean> {
  const { effect, isHarmless } = yield* trials.of(set, 'together');
  return isHarmless && effect !== null && compareDanger(effect.after, now.effect!.after) < 0;
}

/** Takes out what can be spared, dearest first; again for as long as something goes, since one may be what another needed. */
function* freed(from: readonly number[], choosing: Choosing): Trying<readonly number[]> {
  let set = from;
  for (const i of dearestFirst(from, choosing)) {
    const less = set.filter((n) => n !== i);
    if (mayBeDone(choosing, less) && (yield* isAsGood(less, set, choosing))) set = less;
  }
  return set.length === from.length ? set : yield* freed(set, choosing);
}

/** Each work for a cheaper one that alone clears all that only this one of the set clears, where the set then leaves no more. */
function* exchanged(from: readonly number[], choosing: Choosing): Trying<readonly number[]> {
  const { candidates } = choosing;
  const cheaper = byCost(choosing);
  let set = from;
  for (const i of dearestFirst(from, choosing)) {
    const own = onlyBy(
      i,
      set.filter((n) => n !== i),
      choosing,
    );
    for (const other of candidates.filter((n) => !set.includes(n))) {
      const won = wonBy(other, choosing);
      if (own.length === 0 || !own.every((f) => won.includes(f))) continue;
      const next = [...set.filter((n) => n !== i), other].sort((a, b) => a - b);
      if (!set.includes(i) || cheaper(next, set) >= 0 || !mayBeDone(choosing, next)) continue;
      if (yield* isAsGood(next, set, choosing)) set = next;
    }
  }
  return set;
}

function* isAsGood(set: readonly number[], as: readonly number[], { trials }: Choosing): Trying<boolean> {
  const now = yield* trials.of(as, 'together');
  const { effect, isHarmless } = yield* trials.of(set, 'together');
  return isHarmless && effect !== null && (now.effect === null || compareDanger(effect.after, now.effect.after) <= 0);
}

/** Hazards and defects that a work clears alone and no other of a set does. */
function onlyBy(i: number, others: readonly number[], choosing: Choosing): readonly StudyFinding[] {
  const byOthers = new Set(others.flatMap((n) => wonBy(n, choosing)));
  return wonBy(i, choosing).filter((f) => f.severity !== 'advice' && !byOthers.has(f));
}

function wonBy(i: number, { alone }: Choosing): readonly StudyFinding[] {
  const effect = alone.get(i);
  return effect === undefined ? [] : noLongerFound(effect);
}

function dearestFirst(set: readonly number[], { costs, totals }: Choosing): readonly number[] {
  return [...set].sort((a, b) => moneyOf(costs[b]!, totals.by) - moneyOf(costs[a]!, totals.by) || b - a);
}
