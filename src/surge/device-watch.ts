import { deviceLevel, type SurgeDevice } from './device.ts';

/** How a device stands: whether it conducts, and since when its volts have been rising. */
export interface DeviceState {
  readonly isOn: boolean;
  /** Which way the volts stood when it began to conduct: 1 or -1. */
  readonly sign: number;
  /** When its volts last were below a tenth of its level at a slow rise. */
  readonly lowAtS: number;
  readonly firedAtS: number | null;
  /** Largest current so far, ampere. */
  readonly peakA: number;
}

export const restingDevice: DeviceState = { isOn: false, sign: 1, lowAtS: 0, firedAtS: null, peakA: 0 };

/** From here on a rise is timed. Ours: a share of the level at a slow rise. */
const riseShare = 0.1;

/**
 * Volts over the level of a device that is off, as a share of it: above 0 it begins to conduct. The steepness that counts is the
 * mean one since the volts left a tenth of the slow level.
 */
export function excess(device: SurgeDevice, { lowAtS }: DeviceState, timeS: number, volts: number): number {
  const size = Math.abs(volts);
  if (size < riseShare * deviceLevel(device, 0)) return -1;
  return size / deviceLevel(device, size / Math.max(timeS - lowAtS, Number.MIN_VALUE)) - 1;
}

/** The same device a moment later, still off. */
export function watched(device: SurgeDevice, state: DeviceState, timeS: number, volts: number): DeviceState {
  return Math.abs(volts) < riseShare * deviceLevel(device, 0) ? { ...state, lowAtS: timeS } : state;
}
