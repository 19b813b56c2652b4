import type { BondingRun } from '../bonding/bonding-of.ts';
import { type DeviceCourse, deviceRun } from '../surge/device-run.ts';
import { peakOf } from '../surge/peak-of.ts';
import type { SurgeCourse } from '../surge/surge-course.ts';
import { figureDifference, overTime, potentialFigure } from '../surge/surge-figure.ts';
import { surgeModes } from '../surge/surge-modes.ts';
import type { Wave } from '../surge/wave.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';
import { type CoreEnd, type LiveDevice, type LiveNetwork, liveNetwork } from './strike-live.ts';
import { type StrikeRun, type StrikeSite, strikeOf } from './strike-of.ts';

/** A stroke in which protectors conduct above their level. */
export interface StrikeProtected {
  readonly live: LiveNetwork;
  /** With nothing that conducts, and with what does. */
  readonly open: StrikeRun;
  readonly course: DeviceCourse;
  /** In order of time, then of the ids. */
  readonly fired: readonly StrikeFired[];
}

/** A protector whose level is reached, and what becomes of its line. */
export interface StrikeFired {
  readonly arrester: string;
  /** null: it stands between two points of metal. */
  readonly line: string | null;
  readonly atS: number;
  /** Across it when it begins to conduct, and the most from then on. */
  readonly levelV: number;
  readonly afterV: number;
  readonly peakA: number;
  readonly chargeC: number;
  readonly energyJ: number;
  readonly passes: StrikePasses | null;
}

/** Core against the case of the box at the end of the line: open, up to the firing, and from then on. */
export interface StrikePasses {
  readonly at: string;
  readonly openV: number;
  readonly beforeV: number;
  readonly afterV: number;
}

/** null: the network with its cores cannot be solved, or its protectors find no state that they stay in. */
export function strikeProtected(
  bonded: Pick<BondingRun, 'graph' | 'site' | 'metal'>,
  site: StrikeSite,
  quiet: StrikeRun,
  wave: Wave,
): StrikeProtected | null {
  const live = liveNetwork(bonded, quiet.network, quiet.places.nodeOf);
  const modes = surgeModes(live.network.surge);
  if (!modes.ok) return null;
  const open = strikeOf({ ...site, network: live.network, modes }, quiet.at, wave);
  if (!open.ok) return null;
  const course = coursed(open, live);
  return course === null ? null : { live, open, course, fired: firedIn(live, open, course) };
}

/** Protectors that switch without end are no reason to say nothing of the rest. */
function coursed({ run }: StrikeRun, { devices }: LiveNetwork): DeviceCourse | null {
  try {
    return deviceRun(
      run,
      devices.map(({ device }) => device),
    );
  } catch (error) {
    if (error instanceof RangeError) throw error;
    return null;
  }
}

function firedIn({ devices, ends }: LiveNetwork, { run }: StrikeRun, course: DeviceCourse): readonly StrikeFired[] {
  return devices
    .flatMap((live, d) => {
      const { firedAtS } = course.devices[d]!;
      const end = live.line === null ? undefined : ends.get(live.line);
      return firedAtS === null
        ? []
        : [firedOf(live, d, course, end === undefined ? null : passing(end, firedAtS, run, course))];
    })
    .sort((a, b) => a.atS - b.atS || byCodeUnit(a.arrester, b.arrester) || byCodeUnit(a.line ?? '', b.line ?? ''));
}

function firedOf(
  { arrester, line }: LiveDevice,
  d: number,
  course: DeviceCourse,
  passes: StrikePasses | null,
): StrikeFired {
  const { firedAtS, volts, currentA } = course.devices[d]!;
  const { timesS } = course.wave;
  const at = timesS.findIndex((time) => time >= firedAtS!);
  const power = volts.map((volt, t) => Math.abs(volt * currentA[t]!));
  return {
    arrester,
    line,
    atS: firedAtS!,
    levelV: Math.abs(volts[at]!),
    afterV: most(volts, at + 1),
    peakA: most(currentA),
    chargeC: area(timesS, currentA.map(Math.abs)),
    energyJ: area(timesS, power),
    passes,
  };
}

function passing(
  { box, core, case: own }: CoreEnd,
  firedAtS: number,
  open: SurgeCourse,
  course: DeviceCourse,
): StrikePasses {
  const between = (of: SurgeCourse) =>
    overTime(of, figureDifference(potentialFigure(of, core), potentialFigure(of, own)));
  const volts = between(course);
  const at = course.wave.timesS.findIndex((time) => time >= firedAtS);
  return {
    at: box,
    openV: Math.abs(peakOf(open.wave.timesS, between(open)).value),
    beforeV: most(volts.subarray(0, at + 1)),
    afterV: most(volts, at + 1),
  };
}

function most(figures: Float64Array, from = 0): number {
  let largest = 0;
  for (let t = from; t < figures.length; t++) largest = Math.max(largest, Math.abs(figures[t]!));
  return largest;
}

/** By straight lines between the times. */
function area(timesS: Float64Array, figures: Float64Array): number {
  let sum = 0;
  for (let t = 1; t < timesS.length; t++) sum += ((figures[t]! + figures[t - 1]!) / 2) * (timesS[t]! - timesS[t - 1]!);
  return sum;
}
