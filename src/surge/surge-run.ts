import { checkSurgeSource } from './check-surge-network.ts';
import { modePairs } from './mode-pair.ts';
import type { SurgeCourse } from './surge-course.ts';
import { surgeDrive } from './surge-drive.ts';
import { energyShare } from './surge-energy.ts';
import type { SurgeModes } from './surge-modes.ts';
import type { SurgeSource } from './surge-network.ts';
import { surgeStates } from './surge-states.ts';
import { inTwiceTheSteps, sampledWave, surgeSteps } from './surge-steps.ts';

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
  const pairOf = modePairs(modes, drive);
  const z = surgeStates(modes.count, pairOf, wave);
  const inputs = [{ drive, value: wave.currentA, slope: wave.slopeAPerS }];
  const course = { modes, source, drive, wave, inputs, z };
  return {
    ...course,
    errorShare: errorShare(modes, z, surgeStates(modes.count, pairOf, inTwiceTheSteps(wave))),
    energyShare: energyShare(course),
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
