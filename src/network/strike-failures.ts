import { surgeModes } from '../surge/surge-modes.ts';
import type { Wave } from '../surge/wave.ts';
import type { StrikeRun, StrikeSite } from './strike-of.ts';
import { strikeOf } from './strike-of.ts';
import type { StrikePair } from './strike-pairs.ts';
import { type StrikeBetween, strikeBetween } from './strike-result.ts';
import { strikeWithout } from './strike-without.ts';

/** What one loss does to a strike. */
export interface StrikeFailure {
  readonly lost: string;
  /** What stands in one row of metal with it, so that losing it does the same. */
  readonly alike: readonly string[];
  /** What no longer reaches the soil by metal: it has no potential to name. */
  readonly separates: readonly string[];
  /** The difference that grows most, in volts; null: none grows. */
  readonly worst: { readonly pair: StrikePair; readonly beforeV: number; readonly afterV: number } | null;
}

export interface FailuresAsk {
  readonly wave: Wave;
  /** Parts to lose, one at a time; those of one list do the same. */
  readonly groups: readonly (readonly string[])[];
  readonly before: readonly StrikeBetween[];
  /** Parts of which is told when they are cut off. */
  readonly watched: readonly string[];
}

/** A difference that grows by less than this counts as unchanged: of itself, and in volts. */
const growthShare = 0.05;
const growthV = 100;

/**
 * The same stroke with one part lost at a time, each solved anew without it. In the order of what grows most, then of what is
 * cut off.
 */
export function strikeFailures(site: StrikeSite, run: StrikeRun, ask: FailuresAsk): readonly StrikeFailure[] {
  const all = ask.groups.flatMap((group) => failureOf(site, run, group, ask) ?? []);
  const growth = ({ worst }: StrikeFailure) => (worst === null ? 0 : worst.afterV - worst.beforeV);
  return all.sort(
    (a, b) => growth(b) - growth(a) || b.separates.length - a.separates.length || (a.lost < b.lost ? -1 : 1),
  );
}

function failureOf(
  site: StrikeSite,
  run: StrikeRun,
  [lost, ...alike]: readonly string[],
  { wave, before, watched }: FailuresAsk,
): StrikeFailure | null {
  const network = strikeWithout(site.network, lost!);
  const modes = surgeModes(network.surge);
  if (!modes.ok) return null;
  const after = strikeOf({ ...site, network, modes }, run.at, wave);
  if (!after.ok) return { lost: lost!, alike, separates: [run.at.text], worst: null };
  const separates = watched.filter((part) => run.places.nodeOf(part) !== null && after.places.nodeOf(part) === null);
  let worst: StrikeFailure['worst'] = null;
  for (const { pair, peak } of before) {
    const now = strikeBetween(pair, network, after.run, after.places);
    if (now === null) continue;
    const [beforeV, afterV] = [Math.abs(peak.value), Math.abs(now.peak.value)];
    const grows = afterV > beforeV * (1 + growthShare) && afterV - beforeV > growthV;
    if (grows && (worst === null || afterV - beforeV > worst.afterV - worst.beforeV)) worst = { pair, beforeV, afterV };
  }
  return separates.length === 0 && worst === null ? null : { lost: lost!, alike, separates, worst };
}
