import { deviceVolts, type SurgeDevice } from './device.ts';
import type { DeviceMoment, StepAsked } from './device-moment.ts';
import { type DeviceState, excess, watched } from './device-watch.ts';
import { cubicAt } from './port-step.ts';
import { radauPoints } from './radau.ts';
import type { SolvedStep } from './step-solver.ts';

/** What a step has made of the devices. */
export interface Judged {
  readonly states: readonly DeviceState[];
  /** A level was passed, or a current went through zero, by more than may be within one step. */
  readonly isTooFar: boolean;
  /** Largest difference to what the step before foretold, over the largest current. */
  readonly apart: number;
}

/** How far over its level a gap may be found, and what share of its peak its last current may have. Ours. */
const levelShare = 3e-4;
const endShare = 1e-3;
/** A varistor begins softly: it may be found further over its level; below this share of it, it counts as off. Ours. */
const softShare = 0.02;
const softEndShare = 0.8;

export function judgeDevices(
  devices: readonly SurgeDevice[],
  moment: DeviceMoment,
  { startS, stepS }: StepAsked,
  { volts, currents }: SolvedStep,
): Judged {
  let [isTooFar, apart] = [false, 0];
  const states = devices.map((device, d) => {
    const state = moment.states[d]!;
    const timesS = radauPoints.map((point) => startS + point * stepS);
    if (!state.isOn) {
      const off = stillOff(device, state, timesS, volts[d]!);
      isTooFar ||= off.most > (device.kind === 'gap' ? levelShare : softShare);
      return off.state;
    }
    const on = stillOn(device, state, currents[d]!, volts[d]!);
    isTooFar ||= on.isTooFar;
    const before = moment.currents?.[d];
    if (before !== undefined)
      apart = Math.max(apart, unforeseen(device, on.state, before, currents[d]!, stepS / moment.stepS));
    return on.state;
  });
  return { states, isTooFar, apart };
}

function stillOff(device: SurgeDevice, before: DeviceState, timesS: readonly number[], volts: Float64Array) {
  let [state, most, sign] = [before, -1, 1];
  timesS.forEach((timeS, s) => {
    const over = excess(device, state, timeS, volts[s]!);
    if (over > most) [most, sign] = [over, Math.sign(volts[s]!)];
    state = watched(device, state, timeS, volts[s]!);
  });
  if (most <= 0) return { state, most };
  return { state: { ...state, isOn: true, sign, firedAtS: state.firedAtS ?? timesS[2]! }, most };
}

function stillOn(device: SurgeDevice, state: DeviceState, currents: Float64Array, volts: Float64Array) {
  const peakA = currents.reduce((most, current) => Math.max(most, Math.abs(current)), state.peakA);
  const [end, volt] = [currents[3]!, volts[2]!];
  if (device.kind === 'varistor') {
    const [first] = device.points;
    const isOff = Math.abs(end) < first!.currentA && Math.abs(volt) < softEndShare * first!.volts;
    return { state: { ...state, peakA, isOn: !isOff }, isTooFar: false };
  }
  const back = -currents.reduce((least, current) => Math.min(least, state.sign * current), 0);
  const isOff = state.sign * end <= 0;
  return { state: { ...state, peakA, isOn: !isOff }, isTooFar: back > endShare * peakA };
}

/**
 * Currents that differ from what was foretold, over the largest; and the volts that a curve makes of the difference, which is
 * much where a varistor's current dies away.
 */
function unforeseen(
  device: SurgeDevice,
  { sign, peakA }: DeviceState,
  before: Float64Array,
  currents: Float64Array,
  ratio: number,
): number {
  if (peakA === 0) return 0;
  const most = deviceVolts(device, sign, sign * peakA).volts;
  return radauPoints.reduce((worst, point, s) => {
    const [current, foretold] = [currents[s + 1]!, cubicAt(before, 1 + point * ratio)];
    const volts = deviceVolts(device, sign, current).volts - deviceVolts(device, sign, foretold).volts;
    return Math.max(worst, Math.abs(current - foretold) / peakA, (voltsWeight * Math.abs(volts)) / Math.abs(most));
  }, 0);
}

/** Volts count for less: half a per cent of the current, five of the volts. Ours. */
const voltsWeight = 0.1;
