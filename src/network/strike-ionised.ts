import { ionisationCurrent, ionisedResistance } from '../surge/ionised-resistance.ts';
import { peakOf } from '../surge/peak-of.ts';
import { currentFigure, overTime } from '../surge/surge-figure.ts';
import { surgeModes } from '../surge/surge-modes.ts';
import type { Wave } from '../surge/wave.ts';
import { type StrikeRun, type StrikeSite, strikeOf } from './strike-of.ts';

/** An electrode about which the soil broke down. */
export interface IonisedElectrode {
  readonly part: string;
  readonly peakA: number;
  /** At which the breakdown starts to tell, all its pieces together. */
  readonly onsetA: number;
  /** Its own resistance, and what is left of it at the peak. */
  readonly ohm: number;
  readonly ionisedOhm: number;
}

export interface IonisedStrike {
  readonly site: StrikeSite;
  readonly run: StrikeRun;
  readonly electrodes: readonly IonisedElectrode[];
}

const mostTurns = 20;
/** Currents that settle within this are settled. */
const settledShare = 0.005;

/**
 * A stroke with the soil broken down about its electrodes at a field, volts per metre: each has for the whole stroke the
 * resistance that goes with its own peak (CIGRE TB 63), by turns until the peaks settle. What electrodes feel of each other
 * stays. Quasi-static: late in the tail a real electrode has more again. `soilOf`: ohm metre about a part. The run itself where
 * a lowered matrix cannot be solved.
 */
export function ionisedStrike(
  site: StrikeSite,
  run: StrikeRun,
  { wave, fieldVPerM, soilOf }: IonisedAsk,
): IonisedStrike {
  const { points, surge } = site.network;
  const whole = surge.earth.resistanceOhm as readonly (readonly number[])[];
  const ownOhm = whole.map((row, i) => row[i]!);
  const onset = ownOhm.map((ohm, i) => ionisationCurrent(ohm, soilOf(points[i]!.part), fieldVPerM));
  let [now, peaks] = [{ site, run }, peaksOf(run)];
  for (let turn = 0; turn < mostTurns; turn++) {
    const own = ownOhm.map((ohm, i) => {
      return ionisedResistance(ohm, soilOf(points[i]!.part), fieldVPerM, peaks[i]!);
    });
    const next = withOwn(site, own, run, wave);
    if (next === null) break;
    const settled = peaksOf(next.run);
    const change = Math.max(...settled.map((peak, i) => Math.abs(peak - peaks[i]!)));
    const largest = Math.max(...peaks);
    now = next;
    peaks = settled.map((peak, i) => (peak + peaks[i]!) / 2);
    if (change < settledShare * largest) break;
  }
  return { ...now, electrodes: electrodesOf(now, ownOhm, onset) };
}

export interface IonisedAsk {
  readonly wave: Wave;
  readonly fieldVPerM: number;
  readonly soilOf: (part: string) => number;
}

/** Into the soil at each point. */
function peaksOf({ network, run }: StrikeRun): readonly number[] {
  const { branches, points } = network;
  return points.map((_, i) => {
    const weights = new Float64Array(branches.length + points.length);
    weights[branches.length + i] = 1;
    return Math.abs(peakOf(run.wave.timesS, overTime(run, currentFigure(run, weights))).value);
  });
}

function withOwn(site: StrikeSite, own: readonly number[], { at }: StrikeRun, wave: Wave) {
  const { network } = site;
  const rows = network.surge.earth.resistanceOhm as readonly (readonly number[])[];
  const resistanceOhm = rows.map((row, i) => row.map((ohm, j) => (i === j ? own[i]! : ohm)));
  const surge = { ...network.surge, earth: { ...network.surge.earth, resistanceOhm } };
  const modes = surgeModes(surge);
  if (!modes.ok) return null;
  const lowered = { ...site, network: { ...network, surge }, modes };
  const run = strikeOf(lowered, at, wave);
  return run.ok ? { site: lowered, run } : null;
}

/** Those that lost a hundredth and more, the most current first; the pieces of one part side by side. */
function electrodesOf(
  { site, run }: Pick<IonisedStrike, 'site' | 'run'>,
  ownOhm: readonly number[],
  onset: readonly number[],
): readonly IonisedElectrode[] {
  const { points, surge } = site.network;
  const peaks = peaksOf(run);
  const rows = surge.earth.resistanceOhm as readonly (readonly number[])[];
  const sums = new Map<string, { peakA: number; onsetA: number; siemens: number; ionised: number }>();
  points.forEach(({ part }, i) => {
    const held = sums.get(part) ?? { peakA: 0, onsetA: 0, siemens: 0, ionised: 0 };
    sums.set(part, {
      peakA: held.peakA + peaks[i]!,
      onsetA: held.onsetA + onset[i]!,
      siemens: held.siemens + 1 / ownOhm[i]!,
      ionised: held.ionised + 1 / rows[i]![i]!,
    });
  });
  return [...sums]
    .map(([part, { peakA, onsetA, siemens, ionised }]) => ({
      part,
      peakA,
      onsetA,
      ohm: 1 / siemens,
      ionisedOhm: 1 / ionised,
    }))
    .filter(({ ohm, ionisedOhm }) => ionisedOhm < 0.99 * ohm)
    .sort((a, b) => b.peakA - a.peakA || (a.part < b.part ? -1 : 1));
}
