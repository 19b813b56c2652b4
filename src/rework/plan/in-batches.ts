import type { StudyFinding } from '../../study/study.ts';
import type { Work } from '../work.ts';
import { effectOf, harmOf } from './effect-of.ts';
import { isPossible, type Pool } from './sets-of-works.ts';
import type { SetTrial, Trials, Trying } from './trials.ts';

/** From so many parts on works are first worked out several at a time: one study of such a site takes long. */
export const leastForBatches = 150;

/** What each work changes of the findings, as far as it can be told from trying several at a time. */
export interface Share {
  readonly cleared: readonly StudyFinding[];
  readonly appeared: readonly StudyFinding[];
}

/**
 * Tries works several at a time, those together that answer no finding in common and change no part in common. What the
 * findings changed by is taken to be the doing of the one work that answers it, or that is about its place; where that is not
 * one work alone, or it would bring something bad, the works in question are tried each by itself.
 */
export function* inBatches(trials: Trials, count: number): Trying<ReadonlyMap<number, Share>> {
  const { pool } = trials;
  const shares = new Map<number, Share>();
  const unclear = new Set<number>();
  let done = 0;
  for (const batch of batchesOf(pool)) {
    const trial = yield* trials.of(batch, 'alone', { done, of: count });
    const found = trial.effect === null ? null : attributed(batch, trial, pool);
    for (const i of batch) {
      const share = found?.get(i);
      if (share == null || share.appeared.some((f) => f.severity !== 'advice')) unclear.add(i);
      else shares.set(i, share);
    }
    done += batch.length;
  }
  for (const i of unclear) {
    const { effect } = yield* trials.of(pool.bundles[i]!, 'alone', { done: count - 1, of: count });
    if (effect !== null) shares.set(i, { cleared: effect.cleared, appeared: effect.appeared });
  }
  return shares;
}

/** Each work in the first batch that has nothing of it yet; what it needs stands in the same batch. */
function batchesOf(pool: Pool): readonly (readonly number[])[] {
  const about = pool.works.map(aboutOf);
  const batches: { readonly works: Set<number>; readonly about: Set<string> }[] = [];
  for (const [i, bundle] of pool.bundles.entries()) {
    const fits = batches.find(
      (b) => [...about[i]!].every((a) => !b.about.has(a)) && isPossible(pool, [...new Set([...b.works, ...bundle])]),
    );
    const batch = fits ?? { works: new Set<number>(), about: new Set<string>() };
    if (fits === undefined) batches.push(batch);
    for (const n of bundle) batch.works.add(n);
    for (const a of about[i]!) batch.about.add(a);
  }
  return batches.map((b) => [...b.works].sort((x, y) => x - y));
}

/** Findings that it answers and parts that it changes. */
function aboutOf(work: Work): ReadonlySet<string> {
  return new Set([...work.answers, ...changedParts(work)]);
}

function changedParts({ changes }: Work): readonly string[] {
  return changes.flatMap((c) => (c.id === null ? [] : [c.id]));
}

/** Who did what; null for works of whom that cannot be told. */
function attributed(batch: readonly number[], { effect }: SetTrial, pool: Pool): ReadonlyMap<number, Share | null> {
  const shares = new Map<number, { cleared: StudyFinding[]; appeared: StudyFinding[] } | null>(
    batch.map((i) => [i, { cleared: [], appeared: [] }]),
  );
  const give = (f: StudyFinding, what: 'cleared' | 'appeared') => {
    const doers = doersOf(f, batch, pool);
    if (doers.length === 1 || (f.severity === 'advice' && doers.length > 0)) shares.get(doers[0]!)?.[what].push(f);
    else if (f.severity !== 'advice') for (const i of doers.length === 0 ? batch : doers) shares.set(i, null);
  };
  for (const f of effect!.cleared) give(f, 'cleared');
  for (const f of effect!.appeared) give(f, 'appeared');
  return shares;
}

/** The works that answer it; else those that are about its place. */
function doersOf({ id, at, under }: StudyFinding, batch: readonly number[], pool: Pool): readonly number[] {
  const works = (holds: (work: Work) => boolean) => batch.filter((i) => holds(pool.works[i]!));
  const answering = works((w) => w.answers.includes(id));
  if (answering.length > 0) return answering;
  const places = new Set(at.flatMap((place) => [place, place.split(/[:.@]/)[0]!]));
  const there = works((w) => [...w.at, ...changedParts(w)].some((part) => places.has(part)));
  if (there.length === 1 || under === null) return there;
  // what was folded under another goes with it
  const above = works((w) => w.answers.includes(under));
  return above.length > 0 ? above : there;
}

/** Sets of works put together from what each does: nothing is worked out anew. */
export function puttingTogether(trials: Trials, shares: ReadonlyMap<number, Share>): Trials {
  const { pool, before } = trials;
  const known = new Map<string, SetTrial>();
  const trialOf = (set: readonly number[]): SetTrial => {
    const key = [...set].sort((a, b) => a - b).join();
    const found = known.get(key) ?? together(set.map((i) => shares.get(i)));
    known.set(key, found);
    return found;
  };
  const together = (of: readonly (Share | undefined)[]): SetTrial => {
    if (of.some((share) => share === undefined))
      return { outlook: null, tried: null, effect: null, problem: '', isHarmless: false };
    const outlook = { findings: withShares(before.findings, of as readonly Share[]), earthOhm: null };
    const effect = effectOf({ findings: before.findings, earthOhm: null }, outlook);
    return { outlook, tried: null, effect, problem: null, isHarmless: harmOf(effect).length === 0 };
  };
  return {
    pool,
    before,
    // biome-ignore lint/correctness/useYield: nothing is tried
    *of(set) {
      return trialOf(set);
    },
    known: trialOf,
    workedOut: trialOf,
  };
}

/** What stood under a finding that is gone stands by itself. */
function withShares(findings: readonly StudyFinding[], shares: readonly Share[]): readonly StudyFinding[] {
  const cleared = new Set(shares.flatMap((s) => s.cleared));
  const gone = new Set([...cleared].map((f) => f.id));
  const left = findings.filter((f) => !cleared.has(f));
  const came = shares.flatMap((s) => s.appeared);
  return [...left, ...came].map((f) => (f.under !== null && gone.has(f.under) ? { ...f, under: null } : f));
}
