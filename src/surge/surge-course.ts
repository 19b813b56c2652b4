import type { SurgeDrive } from './surge-drive.ts';
import type { SurgeModes } from './surge-modes.ts';
import type { SurgeSource } from './surge-network.ts';
import type { SampledWave } from './surge-steps.ts';

/** Something that drives the modes, and its value and slope at all times of a course. */
export interface SurgeInput {
  readonly drive: SurgeDrive;
  readonly value: Float64Array;
  readonly slope: Float64Array;
}

/** A stroke over time. */
export interface SurgeCourse {
  readonly modes: SurgeModes;
  readonly source: SurgeSource;
  /** Of the source. */
  readonly drive: SurgeDrive;
  readonly wave: SampledWave;
  /** All that drives the modes, the source first. */
  readonly inputs: readonly SurgeInput[];
  /** Modes, time by time. */
  readonly z: Float64Array;
}
