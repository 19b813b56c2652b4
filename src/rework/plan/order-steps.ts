import type { WorkCost, WorkEffect } from '../work.ts';
import { burdenOf, pointsOf } from './burden-of.ts';
import { type Choosing, mayBeDone } from './choosing.ts';
import { withFirsts } from './comes-before.ts';
import { effectOf, harmOf, noLongerFound } from './effect-of.ts';
import type { Outlook } from './outlook.ts';
import type { Trying } from './trials.ts';

/** A work in its turn, by its number in the pool. */
export interface Turn {
  readonly number: number;
  readonly inTurn: WorkEffect;
}

/** How early a work comes: what it takes away (2: a hazard, 1: a defect, 0: neither), then how much for its cost and hours. */
interface Rank {
  readonly danger: number;
  readonly ratio: number;
}

/**
 * Puts chosen works in order: danger first, then effect for money and for hours; what a work needs comes right before it. After
 * each, the effect of the next one is worked out anew on the site as it is then; a work is taken once what it really does there
 * still beats what the others did when they were last tried. `turns` is filled as it goes, so that it can be stopped.
 */
export function* orderSteps(choosing: Choosing, chosen: readonly number[], turns: Turn[]): Trying<void> {
  const ranks = new Map(chosen.map((i) => [i, rankAlone(i, choosing)]));
  for (const left = new Set(chosen); left.size > 0; ) {
    const next = yield* nextOf(choosing, left, ranks, turns);
    for (const i of next) {
      yield* take(choosing, i, turns);
      left.delete(i);
    }
  }
}

/** Further works that take advice or what is left away, one after the other, for as long as one of them does. */
export function* addFurther(choosing: Choosing, further: readonly number[], turns: Turn[]): Trying<void> {
  const ranks = new Map(further.map((i) => [i, rankAlone(i, choosing)]));
  const left = new Set(further.filter((i) => ranks.get(i)!.ratio > 0));
  while (left.size > 0) {
    const done = turns.map((t) => t.number);
    const mayFollow = [...left].filter((i) => mayBeDone(choosing, withBundle(done, i, choosing)));
    if (mayFollow.length === 0) return;
    const next = yield* nextOf(choosing, new Set(mayFollow), ranks, turns);
    const last = next.at(-1)!;
    const trial = yield* choosing.trials.of([...done, ...next], 'in turn');
    const worth = ranks.get(last)!.ratio > 0 && trial.isHarmless;
    if (worth) for (const i of next) yield* take(choosing, i, turns);
    // what it needs may do all of it by now
    if (worth && next.length > 1 && doesNothing(turns.at(-1)!)) turns.pop();
    for (const i of worth ? next : [last]) left.delete(i);
  }
}

function doesNothing({ inTurn }: Turn): boolean {
  return noLongerFound(inTurn).length === 0 && pointsOf(inTurn.before, inTurn.after) <= 0;
}

/**
 * Puts works that renew an electrode or move a bar before those that land on it, and works out anew what each then does.
 * Where that order would bring something bad on the way that the old one does not, the old one stays.
 */
export function* renewedFirst(choosing: Choosing, turns: Turn[]): Trying<void> {
  const order = withFirsts(
    turns.map((t) => t.number),
    choosing.trials.pool,
  );
  const same = turns.findIndex((t, i) => t.number !== order[i]);
  if (same < 0) return;
  const anew = turns.slice(0, same);
  for (const i of order.slice(same)) yield* take(choosing, i, anew);
  const had = new Set(harmOnTheWay(turns));
  if (harmOnTheWay(anew).some((id) => !had.has(id))) return;
  // only now: stopped on the way, the old order holds
  turns.splice(0, turns.length, ...anew);
}

function harmOnTheWay(turns: readonly Turn[]): readonly string[] {
  return turns.flatMap((t) => harmOf(t.inTurn).map((f) => f.id));
}

function* take(choosing: Choosing, i: number, turns: Turn[]): Trying<void> {
  const before = yield* outlookAfter(
    choosing,
    turns.map((t) => t.number),
  );
  const after = yield* outlookAfter(choosing, [...turns.map((t) => t.number), i]);
  turns.push({ number: i, inTurn: effectOf(before, after) });
}

/** The work that comes next with what it needs, in order. Its rank is fresh when it is returned. */
function* nextOf(
  choosing: Choosing,
  left: ReadonlySet<number>,
  ranks: Map<number, Rank>,
  turns: readonly Turn[],
): Trying<readonly number[]> {
  const done = turns.map((t) => t.number);
  const before = yield* outlookAfter(choosing, done);
  const isFresh = new Set<number>();
  for (;;) {
    const best = [...left].reduce((a, b) => (isEarlier(ranks.get(b)!, ranks.get(a)!) ? b : a));
    const bundle = withBundle(done, best, choosing).slice(done.length);
    if (isFresh.has(best) || left.size === 1) {
      if (!isFresh.has(best)) ranks.set(best, yield* rankNow(choosing, done, bundle, before));
      return bundle;
    }
    ranks.set(best, yield* rankNow(choosing, done, bundle, before));
    isFresh.add(best);
  }
}

function withBundle(done: readonly number[], i: number, { trials }: Choosing): readonly number[] {
  return [...done, ...trials.pool.bundles[i]!.filter((n) => !done.includes(n))];
}

function* outlookAfter({ trials }: Choosing, set: readonly number[]): Trying<Outlook> {
  if (set.length === 0) return trials.before;
  return (yield* trials.of(set, 'in turn')).outlook ?? trials.before;
}

function* rankNow(
  choosing: Choosing,
  done: readonly number[],
  bundle: readonly number[],
  before: Outlook,
): Trying<Rank> {
  const after = yield* outlookAfter(choosing, [...done, ...bundle]);
  const effect = effectOf(before, after);
  return rankOf(effect, bundle, choosing);
}

function rankAlone(i: number, choosing: Choosing): Rank {
  const effect = choosing.alone.get(i);
  return effect === undefined ? { danger: -1, ratio: 0 } : rankOf(effect, choosing.trials.pool.bundles[i]!, choosing);
}

function rankOf(effect: WorkEffect, bundle: readonly number[], { costs, totals }: Choosing): Rank {
  // what brings something new here waits for what takes it away again
  if (harmOf(effect).length > 0) return { danger: -1, ratio: 0 };
  const { before, after } = effect;
  const burden = bundle.reduce((sum, n) => sum + burdenOf(costs[n] as WorkCost, totals), 0);
  const danger = before.hazards > after.hazards ? 2 : before.defects > after.defects ? 1 : 0;
  return { danger, ratio: pointsOf(before, after) / (burden + 1e-9) };
}

/** Those that do something alone, what does most first. */
export function inRank(works: readonly number[], choosing: Choosing): readonly number[] {
  const ranks = new Map(works.map((i) => [i, rankAlone(i, choosing)]));
  const order = (a: number, b: number) => {
    const [of, than] = [ranks.get(a)!, ranks.get(b)!];
    return isEarlier(of, than) ? -1 : isEarlier(than, of) ? 1 : a - b;
  };
  return works.filter((i) => ranks.get(i)!.ratio > 0).sort(order);
}

/** Ties go to the lower number, which is the order of their ids. */
function isEarlier(a: Rank, b: Rank): boolean {
  return a.danger > b.danger || (a.danger === b.danger && a.ratio > b.ratio);
}
