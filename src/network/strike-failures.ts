import { cutter } from '../surge/cut-run.ts';
import { reachedAtS } from '../surge/device-reach.ts';
import { deviceRun } from '../surge/device-run.ts';
import type { SurgeCourse } from '../surge/surge-course.ts';
import { surgeModes } from '../surge/surge-modes.ts';
import type { Wave } from '../surge/wave.ts';
import type { LiveDevice } from './strike-live.ts';
import { type StrikeRun, type StrikeSite, strikeOf } from './strike-of.ts';
import type { StrikePair } from './strike-pairs.ts';
import type { StrikeProtected } from './strike-protected.ts';
import { type StrikePlaces, strikeBetween } from './strike-result.ts';
import { strikeWithout } from './strike-without.ts';

/** What one loss does to a strike. */
export interface StrikeFailure {
  readonly lost: string;
  /** What stands in one row of metal with it, so that losing it does the same. */
  readonly alike: readonly string[];
  /** What no longer reaches the soil by metal: it has no potential to name. */
  readonly separates: readonly string[];
  /** Protectors that reach their level only then, and that no longer do. */
  readonly fires: readonly string[];
  readonly rests: readonly string[];
  /** The difference that grows most, in volts; null: none grows. Where a protector changes its mind, with those that conduct. */
  readonly worst: { readonly pair: StrikePair; readonly beforeV: number; readonly afterV: number } | null;
}

export interface FailuresAsk {
  readonly wave: Wave;
  /** Parts to lose, one at a time; those of one list do the same. */
  readonly groups: readonly (readonly string[])[];
  readonly pairs: readonly StrikePair[];
  /** Parts of which is told when they are cut off. */
  readonly watched: readonly string[];
  /** The same stroke with what conducts above its level; null: it is not known. */
  readonly guarded: StrikeProtected | null;
}

/** A difference that grows by less than this counts as unchanged: of itself, and in volts. */
const growthShare = 0.05;
const growthV = 100;

/**
 * The same stroke with one part lost at a time: the solution brought up to date where every protector stays as it was, stepped
 * again without the part where one would change. In the order of what grows most, then of what is cut off.
 */
export function strikeFailures(site: StrikeSite, likely: StrikeRun, ask: FailuresAsk): readonly StrikeFailure[] {
  const whole = ask.guarded?.open ?? likely;
  const losing: Losing = {
    site,
    whole,
    ask,
    cut: cutter(whole.run),
    devices: ask.guarded?.live.devices ?? [],
    reached: reachedIn(whole.run, ask.guarded?.live.devices ?? []),
    before: voltsIn(ask.pairs, { ...whole, course: whole.run }),
  };
  const all = ask.groups.flatMap((group) => failureOf(losing, group) ?? []);
  const growth = ({ worst }: StrikeFailure) => (worst === null ? 0 : worst.afterV - worst.beforeV);
  return all.sort(
    (a, b) => growth(b) - growth(a) || b.separates.length - a.separates.length || (a.lost < b.lost ? -1 : 1),
  );
}

interface Losing {
  readonly site: StrikeSite;
  readonly whole: StrikeRun;
  readonly ask: FailuresAsk;
  readonly cut: ReturnType<typeof cutter>;
  readonly devices: readonly LiveDevice[];
  readonly reached: readonly boolean[];
  readonly before: readonly (number | null)[];
}

interface Solved extends Pick<StrikeRun, 'network' | 'places'> {
  readonly course: SurgeCourse;
}

function voltsIn(pairs: readonly StrikePair[], { network, course, places }: Solved): readonly (number | null)[] {
  return pairs.map((pair) => {
    const found = strikeBetween(pair, network, course, places);
    return found === null ? null : Math.abs(found.peak.value);
  });
}

function reachedIn(course: SurgeCourse, devices: readonly LiveDevice[]): readonly boolean[] {
  const isDefined = (node: number | null) => node === null || course.modes.loops.toEarth[node] !== null;
  return devices.map(
    ({ device }) => isDefined(device.from) && isDefined(device.to) && reachedAtS(course, device) !== null,
  );
}

function failureOf(losing: Losing, [lost, ...alike]: readonly string[]): StrikeFailure | null {
  const { whole, ask, devices, reached, before } = losing;
  const branches = whole.network.branches.flatMap(({ part }, branch) => (part === lost ? [branch] : []));
  const course = losing.cut(branches);
  const none = { lost: lost!, alike, fires: [], rests: [], worst: null };
  if (!course.ok) return { ...none, separates: [whole.at.text] };
  const gone = new Set(course.separated);
  const places = without(whole.places, gone);
  const now = reachedIn(course, devices);
  const changed = (is: boolean) =>
    namesOf(devices.filter(({ line }, d) => now[d] === is && reached[d] !== is && line !== lost));
  const [fires, rests] = [changed(true), changed(false)];
  const isSame = fires.length === 0 && rests.length === 0;
  const again = isSame ? null : steppedAgain(losing, lost!);
  const worst =
    again === null || ask.guarded === null
      ? grownMost(ask.pairs, before, voltsIn(ask.pairs, { network: whole.network, course, places }))
      : grownMost(ask.pairs, voltsIn(ask.pairs, { ...ask.guarded.open, course: ask.guarded.course }), again);
  const separates = ask.watched.filter((part) => whole.places.nodeOf(part) !== null && places.nodeOf(part) === null);
  return separates.length === 0 && worst === null && isSame ? null : { ...none, separates, fires, rests, worst };
}

function without({ nodeOf, placeOf, channel }: StrikePlaces, gone: ReadonlySet<number>): StrikePlaces {
  const kept = (part: string) => {
    const node = nodeOf(part);
    return node === null || gone.has(node) ? null : node;
  };
  return { nodeOf: kept, placeOf: (part) => (kept(part) === null ? null : placeOf(part)), channel };
}

function namesOf(devices: readonly LiveDevice[]): readonly string[] {
  return [...new Set(devices.map(({ arrester }) => arrester))].sort();
}

function grownMost(
  pairs: readonly StrikePair[],
  before: readonly (number | null)[],
  after: readonly (number | null)[],
): StrikeFailure['worst'] {
  let worst: StrikeFailure['worst'] = null;
  pairs.forEach((pair, i) => {
    const [beforeV, afterV] = [before[i], after[i]];
    if (beforeV == null || afterV == null) return;
    const grows = afterV > beforeV * (1 + growthShare) && afterV - beforeV > growthV;
    if (grows && (worst === null || afterV - beforeV > worst.afterV - worst.beforeV)) worst = { pair, beforeV, afterV };
  });
  return worst;
}

/** Volts of the pairs in the network without the part and with what then conducts; null: it cannot be stepped. */
function steppedAgain({ site, whole, ask, devices }: Losing, lost: string): readonly (number | null)[] | null {
  const network = strikeWithout(whole.network, lost);
  const modes = surgeModes(network.surge);
  if (!modes.ok) return null;
  const after = strikeOf({ ...site, network, modes }, whole.at, ask.wave);
  if (!after.ok) return null;
  const standing = devices.flatMap(({ device, between }) => {
    const [from, to] = between.map((node) => network.at[node]!) as [number, number];
    return from < 0 || to < 0 || from === to ? [] : [{ ...device, from, to }];
  });
  try {
    return voltsIn(ask.pairs, { ...after, course: deviceRun(after.run, standing) });
  } catch (error) {
    if (error instanceof RangeError) throw error;
    return null;
  }
}
