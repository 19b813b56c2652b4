import type { StudyFinding } from '../../study/study.ts';
import type { Work } from '../work.ts';
import { effectOf, harmOf, isLeftOf, noLongerFound, openIds } from './effect-of.ts';
import { isPossible, type Pool } from './sets-of-works.ts';
import type { SetTrial, Trials, Trying } from './trials.ts';

/** From so many parts on works are first worked out several at a time: one study of such a site takes long. */
export const leastForBatches = 150;

/** What each work changes of the findings, as far as it can be told from trying several at a time; doubts are in. */
export interface Share {
  readonly gone: readonly StudyFinding[];
  readonly appeared: readonly StudyFinding[];
}

/**
 * Tries works several at a time, those together that reach alike, answer no finding in common and
 * are about no part in common. What the
 * findings changed by is taken to be the doing of the one work that answers it, or that is about its place; where that is not
 * one work alone, or it would bring something bad, the works in question are tried each by itself.
 */
export function* inBatches(trials: Trials, count: number): Trying<ReadonlyMap<number, Share>> {
  const { pool } = trials;
  const shares = new Map<number, Share>();
  let done = 0;
  for (const batch of batchesOf(pool)) {
    const trial = yield* trials.quickly(batch, { done, of: count });
    const known = batch.flatMap((i) => shares.get(i) ?? []);
    const fresh = batch.filter((i) => !shares.has(i));
    const found = trial.effect === null ? null : attributed(fresh, known, trial, trials);
    for (const i of fresh) {
      const share = found?.get(i);
      if (share != null && !share.appeared.some(isGrave)) {
        shares.set(i, share);
        continue;
      }
      const single = yield* trials.quickly(pool.bundles[i]!, { done, of: count });
      if (single.effect !== null) shares.set(i, changedBy(single, trials));
    }
    done += fresh.length;
  }
  return shares;
}

/** Each work in the first batch that has nothing of it yet; what it needs stands in the same batch. */
function batchesOf(pool: Pool): readonly (readonly number[])[] {
  const about = aboutOf(pool.works);
  const batches: { readonly works: Set<number>; readonly about: Set<string>; readonly reach: Reach }[] = [];
  for (const [i, bundle] of pool.bundles.entries()) {
    const fits = batches.find(
      (b) =>
        b.reach === reachOf(pool.works[i]!) &&
        [...about[i]!].every((a) => !b.about.has(a)) &&
        isPossible(pool, [...new Set([...b.works, ...bundle])]),
    );
    const batch = fits ?? { works: new Set<number>(), about: new Set<string>(), reach: reachOf(pool.works[i]!) };
    if (fits === undefined) batches.push(batch);
    for (const n of bundle) batch.works.add(n);
    for (const a of about[i]!) batch.about.add(a);
  }
  // what others need comes first
  const order: readonly Reach[] = ['metal', 'soil', 'place'];
  batches.sort((a, b) => order.indexOf(a.reach) - order.indexOf(b.reach));
  return batches.map((b) => [...b.works].sort((x, y) => x - y));
}

type Reach = 'place' | 'metal' | 'soil';

/** How far a work may be felt: where it is, along the metal that it joins, or in what the whole system has to earth. */
function reachOf({ kind }: Work): Reach {
  if (kind === 'add-rods' || kind === 'deepen-rod') return 'soil';
  return ['bond', 'tie-metalwork', 'second-path', 'close-ring', 'move-panel'].includes(kind) ? 'metal' : 'place';
}

/** What many works land on is no reason to try them apart: a ring, the service. */
const hubFrom = 5;

/** Of each work: findings that it answers, parts that it changes and is about. */
function aboutOf(works: readonly Work[]): readonly ReadonlySet<string>[] {
  const count = new Map<string, number>();
  for (const part of works.flatMap((w) => w.at)) count.set(part, (count.get(part) ?? 0) + 1);
  return works.map(
    (w) => new Set([...w.answers, ...changedParts(w), ...w.at.filter((part) => count.get(part)! < hubFrom)]),
  );
}

function changedParts({ changes }: Work): readonly string[] {
  return changes.flatMap((c) => (c.id === null ? [] : [c.id]));
}

function isGrave({ severity, outcome }: StudyFinding): boolean {
  return severity !== 'advice' && outcome === 'not met';
}

/** All that a trial changed of the findings. */
function changedBy({ effect, outlook }: SetTrial, { before }: Trials): Share {
  return {
    gone: [...noLongerFound(effect!), ...doubtsOnlyIn(before.findings, outlook!.findings)],
    appeared: [...effect!.appeared, ...doubtsOnlyIn(outlook!.findings, before.findings)],
  };
}

/** Who did what beside what is known already; null for works of whom that cannot be told. */
function attributed(
  batch: readonly number[],
  known: readonly Share[],
  trial: SetTrial,
  trials: Trials,
): ReadonlyMap<number, Share | null> {
  const { pool } = trials;
  const shares = new Map<number, { gone: StudyFinding[]; appeared: StudyFinding[] } | null>(
    batch.map((i) => [i, { gone: [], appeared: [] }]),
  );
  const give = (f: StudyFinding, what: 'gone' | 'appeared') => {
    if (known.some((share) => share[what].some((other) => other.id === f.id))) return;
    const doers = doersOf(f, batch, pool);
    if (doers.length === 1 || (!isGrave(f) && doers.length > 0)) shares.get(doers[0]!)?.[what].push(f);
    else if (isGrave(f)) for (const i of doers.length === 0 ? suspects(batch, pool) : doers) shares.set(i, null);
  };
  const { gone, appeared } = changedBy(trial, trials);
  const open = openIds(trials.before.findings);
  for (const f of gone) give(f, 'gone');
  for (const f of appeared) {
    // where a finding became a doubt, who took the finding away brought the doubt
    const doers = [...shares.values()].filter((s) => s?.gone.some((was) => becameDoubt(was, f, open)));
    if (doers.length === 0) give(f, 'appeared');
    for (const doer of doers) doer!.appeared.push(f);
  }
  return shares;
}

/** Where a finding far away changed: what joins electrodes, else what joins metal; of what else it is nobody can tell, and it shows at the end. */
function suspects(batch: readonly number[], pool: Pool): readonly number[] {
  const of = (is: (work: Work) => boolean) => batch.filter((i) => is(pool.works[i]!));
  const bonds = of((w) => w.kind === 'bond' || reachOf(w) === 'soil');
  if (bonds.length > 0) return bonds;
  return of((w) => reachOf(w) === 'metal');
}

function becameDoubt(was: StudyFinding, is: StudyFinding, open: ReadonlySet<string>): boolean {
  return was.outcome === 'not met' && is.outcome === 'cannot tell' && isLeftOf(is, was, open);
}

function doubtsOnlyIn(findings: readonly StudyFinding[], others: readonly StudyFinding[]): readonly StudyFinding[] {
  const doubts = (of: readonly StudyFinding[]) => of.filter((f) => f.outcome === 'cannot tell');
  const had = new Set(doubts(others).map((f) => f.id));
  return doubts(findings).filter((f) => !had.has(f.id));
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
  // what is met is asked by nobody, and what a set put together has to earth is worked out by nobody
  const begun = { findings: before.findings.filter((f) => f.outcome !== 'met'), earthOhm: null };
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
    const outlook = { findings: withShares(begun.findings, of as readonly Share[]), earthOhm: null };
    const effect = effectOf(begun, outlook);
    return { outlook, tried: null, effect, problem: null, isHarmless: harmOf(effect).length === 0 };
  };
  return {
    pool,
    before: begun,
    // biome-ignore lint/correctness/useYield: nothing is tried
    *of(set) {
      return trialOf(set);
    },
    // biome-ignore lint/correctness/useYield: nothing is tried
    *quickly(set) {
      return trialOf(set);
    },
    earthOhmWith: trials.earthOhmWith,
    workedOut: trialOf,
  };
}

/** What stood under a finding that is gone stands by itself. */
function withShares(findings: readonly StudyFinding[], shares: readonly Share[]): readonly StudyFinding[] {
  const gone = new Set(shares.flatMap((s) => s.gone));
  const goneIds = new Set([...gone].map((f) => f.id));
  const left = findings.filter((f) => !gone.has(f));
  const came = new Set(shares.flatMap((s) => s.appeared));
  return [...left, ...came].map((f) => (f.under !== null && goneIds.has(f.under) ? { ...f, under: null } : f));
}
