import { checkSurgeSource } from './check-surge-network.ts';
import { type SurgeDrive, surgeDrive } from './surge-drive.ts';
import { energyShare } from './surge-energy.ts';
import { along, inductanceTimes, resistanceTimes, type SurgeModes } from './surge-modes.ts';
import type { SurgeSource } from './surge-network.ts';
import { type SurgeStates, surgeStates } from './surge-states.ts';
import { inTwiceTheSteps, type SampledWave, sampledWave, surgeSteps } from './surge-steps.ts';

/** A stroke over time. */
export interface SurgeCourse extends SurgeStates {
  readonly modes: SurgeModes;
  readonly source: SurgeSource;
  readonly drive: SurgeDrive;
  readonly wave: SampledWave;
}

export interface SurgeRun extends SurgeCourse {
  /** Largest difference to the same in steps twice as long, over the largest state, in the measure of the energies. */
  readonly errorShare: number;
  /** What went in less what became heat and field, over what went in. */
  readonly energyShare: number;
}

export interface SurgeRunOptions {
  readonly untilS: number;
  /** Steps this many times finer than by default. */
  readonly fineness?: number;
}

/** The modes over time from rest, for one current that is put in. RangeError: see `checkSurgeSource`. */
export function surgeRun(modes: SurgeModes, source: SurgeSource, { untilS, fineness = 1 }: SurgeRunOptions): SurgeRun {
  checkSurgeSource(modes.network, source, untilS);
  const drive = surgeDrive(modes, source);
  const wave = sampledWave(source.wave, surgeSteps(source.wave, untilS, fineness));
  const states = surgeStates(modes, drive, wave);
  return {
    modes,
    source,
    drive,
    wave,
    ...states,
    errorShare: errorShare(modes, states.z, surgeStates(modes, drive, inTwiceTheSteps(wave)).z),
    energyShare: energyShare({ modes, source, drive, wave, states }),
  };
}

/** At every second time, since the other run has no more. */
function errorShare({ count, stored, lost }: SurgeModes, fine: Float64Array, rough: Float64Array): number {
  let [worst, largest] = [0, 0];
  for (let row = 0; row < rough.length; row += count) {
    let [apart, whole] = [0, 0];
    for (let k = 0; k < count; k++) {
      const weight = stored[k]! * usualRatePerS + lost[k]!;
      const value = fine[2 * row + k]!;
      apart += weight * (value - rough[row + k]!) ** 2;
      whole += weight * value ** 2;
    }
    [worst, largest] = [Math.max(worst, apart), Math.max(largest, whole)];
  }
  return largest === 0 ? 0 : Math.sqrt(worst / largest);
}

/** At which energies and losses weigh alike: a microsecond is what counts. */
const usualRatePerS = 1e6;

/** A figure over time that is linear in the currents of the elements: by the source's current and slope, by the modes and theirs. */
export interface SurgeFigure {
  readonly current: number;
  readonly slope: number;
  readonly modes: Float64Array;
  readonly modeSlopes: Float64Array;
}

/** A sum of element currents, each times its weight; `slopes`: of their slopes instead. */
export function currentFigure(run: SurgeCourse, weights: Float64Array, slopes = false): SurgeFigure {
  const { modes, drive } = run;
  const own = weights.reduce((sum, weight, e) => sum + weight * drive.way[e]!, 0);
  const byMode = ofLoops(modes, weights);
  const none = new Float64Array(modes.count);
  return slopes
    ? { current: 0, slope: own, modes: none, modeSlopes: byMode }
    : { current: own, slope: 0, modes: byMode, modeSlopes: none };
}

/** What each mode adds to a sum over the elements, each times its weight. */
export function ofLoops({ loops, count, shape }: SurgeModes, weights: Float64Array): Float64Array {
  const sum = new Float64Array(count);
  loops.loops.forEach((loop, row) => {
    const weight = along(loop, weights);
    if (weight === 0) return;
    for (let k = 0; k < count; k++) sum[k] = sum[k]! + shape[row * count + k]! * weight;
  });
  return sum;
}

/** Potential of a node against remote earth, volts. */
export function potentialFigure(run: SurgeCourse, node: number): SurgeFigure {
  const { modes, drive } = run;
  const way = modes.loops.toEarth[node];
  if (way == null) throw new RangeError(`node ${node} is not there or hangs free: its potential is not defined`);
  return {
    current: along(way, drive.ohm),
    slope: along(way, drive.henry),
    modes: ofLoops(modes, resistanceTimes(modes.network, way)),
    modeSlopes: ofLoops(modes, inductanceTimes(modes.network, way)),
  };
}

/** A figure at all times of the run. */
export function overTime({ wave, z, slope, modes }: SurgeCourse, figure: SurgeFigure): Float64Array {
  const { count } = modes;
  return wave.timesS.map((_, t) => {
    let sum = figure.current * wave.currentA[t]! + figure.slope * wave.slopeAPerS[t]!;
    const row = t * count;
    for (let k = 0; k < count; k++) sum += figure.modes[k]! * z[row + k]! + figure.modeSlopes[k]! * slope[row + k]!;
    return sum;
  });
}
