import type { DeviceState } from './device-watch.ts';

/** A network and its devices at one time. */
export interface DeviceMoment {
  readonly timeS: number;
  /** Length of the step that led here. */
  readonly stepS: number;
  readonly z: Float64Array;
  readonly currentA: Float64Array;
  readonly slopeAPerS: Float64Array;
  readonly volts: Float64Array;
  readonly states: readonly DeviceState[];
  /** Something switched at the end of the step. */
  readonly hasSwitched: boolean;
  /** Currents of the step that led here, at `stepPoints` of it; null: nothing can be foretold by them. */
  readonly currents: readonly Float64Array[] | null;
  /** See `errorShare` of a course. */
  readonly apart: number;
}

export interface StepAsked {
  readonly startS: number;
  readonly stepS: number;
  /** It cannot be halved once more. */
  readonly isLeast: boolean;
}
