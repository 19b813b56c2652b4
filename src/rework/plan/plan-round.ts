import type { StudyFinding } from '../../study/study.ts';
import type { LeftOut, Step, Work, WorkCost, WorkEffect } from '../work.ts';
import { type Totals, totalsOf } from './burden-of.ts';
import { type Choosing, mayBeDone } from './choosing.ts';
import { harmOf, isLeftOf, noLongerFound, openIds } from './effect-of.ts';
import { everySet, mostForEverySet } from './every-set.ts';
import { inBatches, puttingTogether } from './in-batches.ts';
import type { EndsOf } from './landed-on.ts';
import { type Limits, overOf } from './limits.ts';
import { addFurther, inRank, orderSteps, renewedFirst, type Turn } from './order-steps.ts';
import type { QuickLook, TryChanges } from './outlook.ts';
import { compareDanger } from './remaining-of.ts';
import { poolOf } from './sets-of-works.ts';
import { harmless, stepByStep } from './step-by-step.ts';
import { type Ground, type SetTrial, type Trials, type Trying, trialsOf } from './trials.ts';

/** Works for a site as it stands at one moment; filled as it goes, so that it can be stopped. */
export interface Round {
  /** By full recomputation, or while works are chosen on a large site put together from what each does. */
  trials: Trials;
  readonly costs: readonly WorkCost[];
  readonly totals: Totals;
  readonly limits: Limits;
  readonly alone: Map<number, SetTrial>;
  readonly turns: Turn[];
}

export function roundOf(
  ground: Ground,
  works: readonly Work[],
  how: {
    readonly costOf: (work: Work) => WorkCost;
    readonly tryChanges: TryChanges;
    readonly quick?: QuickLook;
    readonly endsOf?: EndsOf;
    readonly limits: Limits;
  },
): Round {
  const pool = poolOf(works, how.endsOf);
  const costs = pool.works.map((w) => how.costOf(w));
  const { limits } = how;
  const trials = trialsOf(pool, ground, how.tryChanges, how.quick ?? null);
  return { trials, costs, totals: totalsOf(costs), limits, alone: new Map(), turns: [] };
}

/**
 * Tries works alone, chooses a set of them, and puts it in order. On a large site works are first tried several at a time
 * and their effects put together; what was chosen is then worked out as a whole, and where that is not what was put together,
 * step by step.
 */
export function* planRound(round: Round, isLarge: boolean): Trying<void> {
  if (!isLarge) {
    yield* tryAlone(round);
    yield* choose(round);
    return;
  }
  const exact = round.trials;
  const shares = yield* inBatches(exact, exact.pool.works.length);
  round.trials = puttingTogether(exact, shares);
  try {
    yield* tryAlone(round);
    for (const [i, trial] of round.alone) round.alone.set(i, withEarth(trial, exact, i));
    yield* choose(round);
  } finally {
    // stopped or not: what is handed on is worked out as a whole
    round.trials = exact;
  }
  yield* confirm(round);
}

/** What a work alone does to the resistance to earth, by an update of the solved network, once somebody reads it. */
function withEarth(trial: SetTrial, { before, earthOhmWith, pool }: Trials, i: number): SetTrial {
  if (trial.effect === null) return trial;
  const earthOhm = {
    get before() {
      return before.earthOhm;
    },
    get after() {
      return earthOhmWith(pool.bundles[i]!);
    },
  };
  return { ...trial, effect: { ...trial.effect, earthOhm } };
}

/** What was put together against the whole; the last step leaves what the whole leaves. */
function* confirm(round: Round): Trying<void> {
  const { trials, turns } = round;
  const chosen = turns.map((t) => t.number);
  const last = turns.at(-1);
  if (last === undefined) return;
  const whole = yield* trials.of(chosen, 'in turn');
  if (whole.isHarmless && compareDanger(whole.effect!.after, last.inTurn.after) === 0) {
    const inTurn = { ...last.inTurn, after: whole.effect!.after };
    turns.splice(-1, 1, { ...last, inTurn });
    return;
  }
  turns.length = 0;
  const choosing = choosingOf(round);
  yield* orderSteps(choosing, yield* harmless(chosen, choosing), turns);
  yield* renewedFirst(choosing, turns);
}

function* choose(round: Round): Trying<void> {
  const choosing = choosingOf(round);
  const chosen = yield* (isFew(round) ? everySet : stepByStep)(choosing);
  yield* orderSteps(choosing, chosen, round.turns);
  const further = choosing.candidates.filter((i) => !chosen.includes(i));
  yield* addFurther(choosing, further, round.turns);
  yield* renewedFirst(choosing, round.turns);
}

/** Whether every set of the works that may be chosen is gone through. */
export function isFew(round: Round): boolean {
  return mayBeChosen(round).length <= mostForEverySet;
}

/** Each work with what it needs, on the site as it is. */
export function* tryAlone({ trials, alone }: Round): Trying<void> {
  const { bundles } = trials.pool;
  for (const [i, bundle] of bundles.entries()) {
    alone.set(i, yield* trials.of(bundle, 'alone', { done: i, of: bundles.length }));
  }
}

/** What can be written. What brings something bad alone may bring nothing after others. */
function mayBeChosen({ trials, alone }: Round): readonly number[] {
  return trials.pool.bundles.flatMap((_, i) => (alone.get(i)?.effect == null ? [] : [i]));
}

/** What a search chooses from, once each was tried alone. */
export function choosingOf(round: Round): Choosing {
  const { trials, costs, totals, limits, alone } = round;
  const effects = [...alone].flatMap(([i, t]) => (t.effect === null ? [] : [[i, t.effect] as const]));
  return { trials, candidates: mayBeChosen(round), costs, totals, limits, alone: new Map(effects) };
}

/** The steps that were found, in order. */
export function stepsOf({ turns, trials, costs, alone }: Round): readonly Step[] {
  return turns.map(({ number, inTurn }) => ({
    work: trials.pool.works[number]!,
    cost: costs[number]!,
    alone: alone.get(number)!.effect!,
    inTurn,
  }));
}

/** The one work that does most for its cost by itself, of those that were tried and that need no other; none: none does. */
export function bestAlone(round: Round): readonly Turn[] {
  const choosing = choosingOf(round);
  const single = choosing.candidates.filter(
    (i) => choosing.alone.has(i) && round.trials.pool.bundles[i]!.length === 1 && mayBeDone(choosing, [i]),
  );
  const [best] = inRank(single, choosing);
  return best === undefined ? [] : [{ number: best, inTurn: choosing.alone.get(best)! }];
}

/** Works that are no step, and why; `left` is what is still wrong at the end. */
export function leftOutOf(round: Round, works: readonly Work[], left: readonly StudyFinding[]): readonly LeftOut[] {
  const { trials, turns } = round;
  const done = new Set(turns.map((t) => t.number));
  const out = trials.pool.works.flatMap((work, i): readonly LeftOut[] => {
    const trial = round.alone.get(i);
    if (done.has(i) || trial === undefined) return [];
    return [{ work, ...reasonOf(round, i, trial, left) }];
  });
  const known = new Set(trials.pool.works.map((w) => w.id));
  const without = works.filter((w) => !known.has(w.id));
  return [...out, ...without.map((work): LeftOut => ({ work, why: 'cannot be written', brings: [], because: [] }))];
}

function reasonOf(round: Round, i: number, trial: SetTrial, left: readonly StudyFinding[]): Omit<LeftOut, 'work'> {
  if (trial.effect === null) return { why: 'cannot be written', brings: [], because: [trial.problem!] };
  const brings = harmOf(trial.effect);
  if (brings.length > 0) return { why: 'breaks another', brings, because: [] };
  if (!doesSomething(trial.effect)) return { why: 'changes nothing', brings, because: [] };
  const { costs, limits, turns, trials } = round;
  const all = [...new Set([...turns.map((t) => t.number), ...trials.pool.bundles[i]!])].map((n) => costs[n]!);
  const over = overOf(all, limits);
  const wouldHelp = isStillLeft(round, i, left);
  if (over !== null && wouldHelp)
    return { why: over, brings, because: over === 'over budget' ? costs[i]!.unpriced : [] };
  // something that it takes away is still there, and no other way to it was chosen: it was tried, and won nothing
  if (wouldHelp && !turns.some((t) => trials.pool.clashes[t.number]!.has(i)))
    return { why: 'brings as much', brings: trial.effect.appeared, because: [] };
  return { why: 'not needed', brings, because: [] };
}

/** Whether something that a work takes away alone is still wrong, whatever else was found at its places all along. */
export function isStillLeft({ trials, alone }: Round, i: number, left: readonly StudyFinding[]): boolean {
  const effect = alone.get(i)?.effect ?? null;
  if (effect === null) return false;
  const open = openIds(trials.before.findings);
  return noLongerFound(effect).some((f) => left.some((now) => isLeftOf(now, f, open)));
}

function doesSomething(effect: WorkEffect): boolean {
  const { before, after } = effect;
  return noLongerFound(effect).length > 0 || before.hazards !== after.hazards || before.defects !== after.defects;
}
