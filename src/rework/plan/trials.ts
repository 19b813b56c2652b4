import type { WorkEffect } from '../work.ts';
import { effectOf, harmOf } from './effect-of.ts';
import type { Outlook, Tried, TryChanges } from './outlook.ts';
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
  readonly tried: Exclude<Tried, { readonly problem: string }> | null;
  /** null: it cannot be written. */
  readonly effect: WorkEffect | null;
  readonly problem: string | null;
  /** Written, and without a hazard or defect that was not there. */
  readonly isHarmless: boolean;
}

export interface Trials {
  readonly pool: Pool;
  readonly before: Outlook;
  /** Numbers of works in any order; each set is worked out once. */
  readonly of: (set: readonly number[], doing: Progress['doing'], count?: Count) => Trying<SetTrial>;
}

type Count = Pick<Progress, 'done' | 'of'>;

/** Tries sets of works by full recomputation. */
export function trialsOf(pool: Pool, before: Outlook, tryChanges: TryChanges): Trials {
  const known = new Map<string, SetTrial>();
  function* of(set: readonly number[], doing: Progress['doing'], count?: Count): Trying<SetTrial> {
    const ordered = [...set].sort((a, b) => a - b);
    const key = ordered.join();
    const found = known.get(key);
    if (found !== undefined) return found;
    if (yield { doing, ...(count ?? { done: known.size, of: null }) }) throw new Stopped();
    const trial = trialOf(before, tryChanges(changesOf(ordered.map((i) => pool.works[i]!))));
    known.set(key, trial);
    return trial;
  }
  return { pool, before, of };
}

function trialOf(before: Outlook, tried: Tried): SetTrial {
  if ('problem' in tried) return { tried: null, effect: null, problem: tried.problem, isHarmless: false };
  const effect = effectOf(before, tried);
  return { tried, effect, problem: null, isHarmless: harmOf(effect).length === 0 };
}
