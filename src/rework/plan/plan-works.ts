import type { Study, StudyFinding } from '../../study/study.ts';
import type { LeftOut, Step, Work, WorkCost, WorksPlan } from '../work.ts';
import { wrongOf } from '../wrong-of.ts';
import { leastForBatches } from './in-batches.ts';
import { endsIn, landsOn, renewedBy } from './landed-on.ts';
import { type Limits, leftOf } from './limits.ts';
import { outlookOf, type QuickLook, type TryChanges } from './outlook.ts';
import { bestAlone, isFew, isStillLeft, leftOutOf, planRound, type Round, roundOf, stepsOf } from './plan-round.ts';
import { compareDanger, remainingOf } from './remaining-of.ts';
import { Stopped, type Trying } from './trials.ts';

export interface PlanAsk {
  /** The site as it is: its study and the owner's text. */
  readonly before: Study;
  readonly text: string;
  readonly candidatesOf: (study: Study) => readonly Work[];
  readonly costOf: (work: Work, study: Study) => WorkCost;
  readonly tryChanges: TryChanges;
  /** For large sites. */
  readonly quick?: QuickLook;
  readonly limits: Limits;
}

/** Once more for what only shows when the first works are done, and for works that clashed; then once more. */
const mostRounds = 3;

interface Done {
  readonly rounds: Round[];
  readonly steps: Step[];
  readonly leftOut: Map<string, LeftOut>;
  study: Study;
  text: string;
  stopped: boolean;
}

/**
 * What to do on a site, in order: works from its findings, each tried alone and in its turn by recomputation; the cheapest set
 * that leaves no hazard and no defect, or the fewest that can be had within the limits; then what takes advice away. Yields
 * before each trial; stopped there, it returns what it has. Where a later round moves or renews what an earlier one has
 * joined something to, all is gone through once more with that first, and kept where it leaves no more.
 */
export function* planWorks(ask: PlanAsk): Trying<WorksPlan> {
  const done = yield* inRounds(ask, []);
  const late = lateRenewals(done);
  if (late.length === 0 || done.stopped || isLarge(ask.before)) return planOf(ask, done);
  const again = yield* inRounds(ask, notAfter(late, done));
  const isBetter = !again.stopped && leavesNoMore(again, done) && lateRenewals(again).length < late.length;
  return planOf(ask, isBetter ? again : done);
}

/** `first`: ids of works that alone are thought of at the beginning. */
function* inRounds(ask: PlanAsk, first: readonly string[]): Trying<Done> {
  const done: Done = { rounds: [], steps: [], leftOut: new Map(), study: ask.before, text: ask.text, stopped: false };
  const tried = new Set<string>();
  const early = first.length === 0 ? [] : ask.candidatesOf(ask.before).filter((w) => first.includes(w.id));
  if (early.length > 0) yield* oneRound(ask, done, early, tried);
  const most = mostRounds + done.rounds.length;
  while (done.rounds.length < most && !done.stopped) {
    const proposed = ask.candidatesOf(done.study);
    for (const work of proposed) leaveUnreckoned(done, work);
    const works = proposed.filter((w) => w.unreckoned === undefined && !tried.has(sayingOf(w)));
    for (const work of works) tried.add(sayingOf(work));
    if (works.length === 0) break;
    const before = done.steps.length;
    yield* oneRound(ask, done, works, tried);
    if (done.steps.length === before || isEnough(done.study)) break;
  }
  return done;
}

/** Works with what takes a hazard or a defect away and lands on nothing that they renew: danger stays first. */
function notAfter(late: readonly string[], { steps, study }: Done): readonly string[] {
  const renewed = new Set(steps.flatMap(({ work }) => (late.includes(work.id) ? [...renewedBy(work)] : [])));
  const graver = steps.filter(({ work, inTurn }) => {
    const isFree = [...landsOn(work, endsIn(study))].every((part) => !renewed.has(part));
    return isFree && compareDanger(inTurn.after, inTurn.before) < 0;
  });
  return [...late, ...graver.map((s) => s.work.id)];
}

/** Works that renew what a step before them lands on: within a round the order sees to it. */
function lateRenewals({ steps, study }: Done): readonly string[] {
  const landed = steps.map((s) => landsOn(s.work, endsIn(study)));
  return steps
    .filter(({ work }, i) => [...renewedBy(work)].some((part) => landed.slice(0, i).some((lands) => lands.has(part))))
    .map(({ work }) => work.id);
}

function leavesNoMore(a: Done, b: Done): boolean {
  const [less, more] = [remainingOf(a.study.findings), remainingOf(b.study.findings)];
  return (compareDanger(less, more) || less.advices - more.advices) <= 0;
}

/** What nobody can reckon is told with what stands in its way. */
function leaveUnreckoned({ leftOut }: Done, work: Work): void {
  if (work.unreckoned === undefined) return;
  leftOut.set(work.id, { work, why: 'cannot be reckoned', brings: [], because: work.unreckoned });
}

/** A large site is not gone through again for advice alone. */
function isEnough(study: Study): boolean {
  const { hazards, defects } = remainingOf(study.findings);
  return isLarge(study) && hazards + defects === 0;
}

function isLarge({ parts }: Study): boolean {
  return parts.length >= leastForBatches;
}

function sayingOf({ id, changes }: Work): string {
  return JSON.stringify([id, changes]);
}

function* oneRound(ask: PlanAsk, done: Done, works: readonly Work[], tried: Set<string>): Trying<void> {
  const limits = leftOf(
    ask.limits,
    done.steps.map((s) => s.cost),
  );
  const ground = { text: done.text, outlook: outlookOf(done.study) };
  const costOf = (work: Work) => ask.costOf(work, done.study);
  const round = roundOf(ground, named(works, done.steps), {
    costOf,
    tryChanges: ask.tryChanges,
    ...(ask.quick === undefined ? {} : { quick: ask.quick }),
    endsOf: endsIn(done.study),
    limits,
  });
  done.rounds.push(round);
  try {
    yield* planRound(round, isLarge(done.study));
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    done.stopped = true;
    takeBest(round);
  }
  const steps = stepsOf(round);
  if (steps.length > 0) {
    const last = round.trials.workedOut(round.turns.map((t) => t.number)).tried!;
    done.study = last.study;
    done.text = last.text;
    done.steps.push(...steps);
  }
  const left = wrongOf(done.study.findings);
  for (const out of leftOutOf(round, works, left)) {
    done.leftOut.set(out.work.id, out);
    // a clash with what was chosen may be gone once that is done
    if (out.why === 'not needed' && isClash(round, out.work)) tried.delete(sayingOf(out.work));
  }
}

/** Stopped before anything was put in order: the one work that is best by itself, of those that were tried. */
function takeBest(round: Round): void {
  if (round.turns.length > 0) return;
  round.turns.push(...bestAlone(round));
}

function isClash({ trials, turns }: Round, work: Work): boolean {
  const at = trials.pool.works.indexOf(work);
  return turns.some((t) => trials.pool.clashes[t.number]!.has(at));
}

/** A work of a later round may be called as one that is done already. */
function named(works: readonly Work[], steps: readonly Step[]): readonly Work[] {
  const taken = new Set(steps.map((s) => s.work.id));
  return works.map((work) => {
    let id = work.id;
    for (let n = 2; taken.has(id); n++) id = `${work.id}-${n}`;
    return id === work.id ? work : { ...work, id };
  });
}

function planOf({ before, limits }: PlanAsk, { rounds, steps, leftOut, study, text, stopped }: Done): WorksPlan {
  const isStep = new Set(steps.map((s) => s.work.id));
  const left = wrongOf(study.findings);
  return {
    format: 1,
    before,
    after: study,
    text,
    steps,
    leftOut: [...leftOut.values()]
      .filter((l) => !isStep.has(l.work.id) && !isDoneOtherwise(l, left))
      .map((l) => asItEnded(l, rounds, left)),
    searched: rounds.every(isFew) ? 'every set' : 'step by step',
    weighedBy: rounds[0]?.totals.by ?? 'material',
    limits,
    ...(isLarge(before) ? { inBatches: true as const } : {}),
    stopped,
  };
}

/** Nobody asks for a work that could not be reckoned once nothing is left that it was for. */
function isDoneOtherwise({ why, work }: LeftOut, left: readonly StudyFinding[]): boolean {
  return why === 'cannot be reckoned' && !left.some((f) => work.answers.includes(f.id));
}

/** What a work would have taken away may have gone by the works of a later round. */
function asItEnded(out: LeftOut, rounds: readonly Round[], left: readonly StudyFinding[]): LeftOut {
  if (out.why !== 'brings as much') return out;
  const isStill = rounds.some((round) => {
    const i = round.trials.pool.works.indexOf(out.work);
    return i >= 0 && isStillLeft(round, i, left);
  });
  return isStill ? out : { ...out, why: 'not needed', brings: [] };
}
