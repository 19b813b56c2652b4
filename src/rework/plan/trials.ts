import type { SiteChange } from '../../study/try-change.ts';
import type { Work, WorkEffect } from '../work.ts';
import { effectOf, harmOf } from './effect-of.ts';
import type { Outlook, QuickLook, Tried, TryChanges } from './outlook.ts';
import { changesOf, type Pool } from './sets-of-works.ts';

/** What a plan does now: how many sets of works it has tried; `of` null: nobody can tell how many there will be. */
export interface Progress {
  readonly doing: 'alone' | 'together' | 'in turn';
  readonly done: number;
  readonly of: number | null;
}

/** Something that tries works one after another, so that a person can follow it and stop it; `true` stops. */
export type Trying<T> = Generator<Progress, T, boolean>;

/** Thrown inside a plan when the person stops it. */
export class Stopped extends Error {}

/** A set of works done on the site as it is. */
export interface SetTrial {
  /** What the site is then; null: it cannot be written. */
  readonly outlook: Outlook | null;
  /** Its text and its whole study, where it was worked out as a whole. */
  readonly tried: Exclude<Tried, { readonly problem: string }> | null;
  /** null: it cannot be written. */
  readonly effect: WorkEffect | null;
  readonly problem: string | null;
  /** Written, and without a hazard or defect that was not there. */
  readonly isHarmless: boolean;
}

/** A site as it is: what works are tried on. */
export interface Ground {
  readonly text: string;
  readonly outlook: Outlook;
}

export interface Trials {
  readonly pool: Pool;
  readonly before: Outlook;
  /** Numbers of works in any order; each set is worked out once. */
  readonly of: (set: readonly number[], doing: Progress['doing'], count?: Count) => Trying<SetTrial>;
  /** The same by a quick look where there is one and none of the works answers a rule that it leaves out. */
  readonly quickly: (set: readonly number[], count: Count) => Trying<SetTrial>;
  /** Resistance to earth with a set done, by a quick look; null: it cannot be had so. */
  readonly earthOhmWith: (set: readonly number[]) => number | null;
  /** What was tried already; worked out at once where it was not. */
  readonly workedOut: (set: readonly number[]) => SetTrial;
}

type Count = Pick<Progress, 'done' | 'of'>;

/** Tries sets of works by full recomputation. */
export function trialsOf(pool: Pool, ground: Ground, tryChanges: TryChanges, quick: QuickLook | null = null): Trials {
  const { text, outlook } = ground;
  const known = new Map<string, Known>();
  function* of(set: readonly number[], doing: Progress['doing'], count?: Count): Trying<SetTrial> {
    const key = keyOf(set);
    const found = known.get(key);
    if (found !== undefined) return found.trial;
    if (yield { doing, ...(count ?? { done: known.size, of: null }) }) throw new Stopped();
    return workOut(set);
  }
  function workOut(set: readonly number[]): SetTrial {
    const from = largestWithin(set, known);
    const more = set.filter((i) => from === null || !from.set.includes(i)).sort((a, b) => a - b);
    const trial = trialOf(
      outlook,
      tryChanges(
        from?.trial.tried?.text ?? text,
        changesOf(
          more.map((i) => pool.works[i]!),
          from?.changes,
        ),
      ),
    );
    known.set(keyOf(set), { set, trial, changes: changesOf(set.map((i) => pool.works[i]!)) });
    return trial;
  }
  const earthOhmWith = (set: readonly number[]) =>
    quick?.earthOhm(text, changesOf(set.map((i) => pool.works[i]!))) ?? null;
  function* quickly(set: readonly number[], count: Count): Trying<SetTrial> {
    const works = set.map((i) => pool.works[i]!);
    if (quick === null || answersLeftOut(works, ground, quick)) return yield* of(set, 'alone', count);
    if (yield { doing: 'alone', ...count }) throw new Stopped();
    const tried = quick.tryChanges(text, changesOf(works));
    if ('problem' in tried) return trialOf(outlook, tried);
    // what was not asked stands as it stood
    const kept = outlook.findings.filter((f) => quick.leavesOut.has(f.rule));
    const { text: changed, study, findings } = tried;
    return trialOf(outlook, { text: changed, study, findings: [...findings, ...kept], earthOhm: null });
  }
  return {
    pool,
    before: outlook,
    of,
    quickly,
    earthOhmWith,
    workedOut: (set) => known.get(keyOf(set))?.trial ?? workOut(set),
  };
}

function answersLeftOut(works: readonly Work[], { outlook }: Ground, { leavesOut }: QuickLook): boolean {
  const ids = new Set(outlook.findings.filter((f) => leavesOut.has(f.rule)).map((f) => f.id));
  return works.some((w) => w.answers.some((id) => ids.has(id)));
}

function keyOf(set: readonly number[]): string {
  return [...set].sort((a, b) => a - b).join();
}

interface Known {
  readonly set: readonly number[];
  readonly trial: SetTrial;
  readonly changes: readonly SiteChange[];
}

/** What was written already and has most of a set's works in it: the rest is written into its text. */
function largestWithin(set: readonly number[], known: ReadonlyMap<string, Known>): Known | null {
  let best: Known | null = null;
  for (const one of known.values()) {
    if (one.trial.tried === null || one.set.length <= (best?.set.length ?? 0)) continue;
    if (one.set.every((i) => set.includes(i))) best = one;
  }
  return best;
}

function trialOf(before: Outlook, tried: Tried): SetTrial {
  if ('problem' in tried)
    return { outlook: null, tried: null, effect: null, problem: tried.problem, isHarmless: false };
  const effect = effectOf(before, tried);
  return { outlook: tried, tried, effect, problem: null, isHarmless: harmOf(effect).length === 0 };
}
