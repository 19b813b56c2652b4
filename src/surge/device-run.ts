import { checkDevice, type SurgeDevice } from './device.ts';
import type { DeviceMoment } from './device-moment.ts';
import { deviceVoltsOver } from './device-reach.ts';
import { type DeviceAdvance, deviceAdvance } from './device-step.ts';
import { type DeviceState, excess, restingDevice, watched } from './device-watch.ts';
import { type PortSystem, portSystem } from './port-system.ts';
import type { SurgeCourse } from './surge-course.ts';
import type { SurgeRun } from './surge-run.ts';
import { sampledWave } from './surge-steps.ts';

/** The same stroke with devices that conduct above their level. */
export interface DeviceCourse extends SurgeCourse {
  readonly devices: readonly DeviceHistory[];
  /** Largest difference between what a step found and what the step before had foretold, over the largest current: an upper estimate. */
  readonly errorShare: number;
}

export interface DeviceHistory {
  /** When it first began to conduct; null: never. */
  readonly firedAtS: number | null;
  readonly volts: Float64Array;
  readonly currentA: Float64Array;
}

/**
 * Devices between nodes of a network that is solved without them. Until the first of them reaches its level nothing is solved
 * anew; from there on, step by step, the network as its ports see it and the devices agree on currents, which drive the modes
 * beside the source. Steps are halved until a level is met to three parts in ten thousand. RangeError: see `checkDevice`.
 */
export function deviceRun(run: SurgeRun, devices: readonly SurgeDevice[]): DeviceCourse {
  for (const device of devices) checkDevice(device, run.modes.network.nodeCount);
  const volts = devices.map((device) => deviceVoltsOver(run, device));
  const resting = devices.map(() => restingDevice);
  const { before, states } = firstAbove(run, devices, volts, resting);
  if (before === null) {
    const none = new Float64Array(run.wave.timesS.length);
    return { ...run, devices: volts.map((over) => ({ firedAtS: null, volts: over, currentA: none })) };
  }
  const system = portSystem(run, devices);
  const start = momentAt(run, before, states, volts);
  const advance = deviceAdvance(system, run.source.wave, devices);
  return joined(run, system, { before, volts, moments: [...momentsAfter(run, before, start, advance)] });
}

/** Last time before any device conducts, and how they stand then; null: none ever does. */
function firstAbove(
  run: SurgeRun,
  devices: readonly SurgeDevice[],
  volts: readonly Float64Array[],
  resting: readonly DeviceState[],
): { readonly before: number | null; readonly states: readonly DeviceState[] } {
  let states = resting;
  const { timesS } = run.wave;
  for (let t = 0; t < timesS.length; t++) {
    const isAbove = devices.some((device, d) => excess(device, states[d]!, timesS[t]!, volts[d]![t]!) > 0);
    if (isAbove) return { before: Math.max(0, t - 1), states };
    states = devices.map((device, d) => watched(device, states[d]!, timesS[t]!, volts[d]![t]!));
  }
  return { before: null, states };
}

function momentAt(
  { wave, z, modes }: SurgeRun,
  t: number,
  states: readonly DeviceState[],
  volts: readonly Float64Array[],
): DeviceMoment {
  return {
    timeS: wave.timesS[t]!,
    stepS: wave.stepS[t]!,
    z: z.slice(t * modes.count, (t + 1) * modes.count),
    currentA: new Float64Array(states.length),
    slopeAPerS: new Float64Array(states.length),
    volts: Float64Array.from(volts, (over) => over[t]!),
    states,
    hasSwitched: true,
    currents: null,
    apart: 0,
  };
}

/** Most halvings of a step of the run: below some picoseconds the figures of the ports drown in their own rounding. */
const mostHalvings = 12;

/** Steps of a stroke with devices: hundreds are usual. */
const mostMoments = 100_000;

/** Each step of the run is gone in pieces of a half, a quarter and so on, as its devices ask. */
function* momentsAfter(
  { wave }: SurgeRun,
  before: number,
  start: DeviceMoment,
  advance: DeviceAdvance,
): Generator<DeviceMoment> {
  let [moment, left] = [start, mostMoments];
  let wantedS = wave.stepS[before + 1]!;
  for (let t = before + 1; t < wave.timesS.length; t++) {
    const wholeS = wave.stepS[t]!;
    const parts = 2 ** mostHalvings;
    for (let at = 0; at < parts; ) {
      let size = parts;
      while (size > 1 && (at % size !== 0 || (size / parts) * wholeS > wantedS * 1.0001)) size /= 2;
      const stepS = (size / parts) * wholeS;
      const next = advance(moment, { startS: wave.timesS[t]! - wholeS * (1 - at / parts), stepS, isLeast: size === 1 });
      wantedS = next.wantedS;
      if (next.moment === null) continue;
      moment = next.moment;
      at += size;
      if (left-- === 0) throw new Error('devices switch on and off without end');
      yield moment;
    }
  }
}

interface Joined {
  readonly before: number;
  readonly volts: readonly Float64Array[];
  readonly moments: readonly DeviceMoment[];
}

/** The run up to the first firing, and what was solved anew from there on. */
function joined(run: SurgeRun, { ports }: PortSystem, { before, volts, moments }: Joined): DeviceCourse {
  const { count } = run.modes;
  const kept = before + 1;
  const all = (old: Float64Array, of: (moment: DeviceMoment) => number) =>
    Float64Array.from([...old.subarray(0, kept), ...moments.map(of)]);
  const wave = sampledWave(run.source.wave, {
    timesS: all(run.wave.timesS, ({ timeS }) => timeS),
    stepS: all(run.wave.stepS, ({ stepS }) => stepS),
  });
  const z = new Float64Array((kept + moments.length) * count);
  z.set(run.z.subarray(0, kept * count));
  moments.forEach((moment, m) => {
    z.set(moment.z, (kept + m) * count);
  });
  const none = new Float64Array(kept);
  const currents = ports.map((_, d) => all(none, ({ currentA }) => currentA[d]!));
  const inputs = ports.map(({ drive }, d) => ({
    drive,
    value: currents[d]!,
    slope: all(none, ({ slopeAPerS }) => slopeAPerS[d]!),
  }));
  return {
    ...run,
    wave,
    z,
    inputs: [{ drive: run.drive, value: wave.currentA, slope: wave.slopeAPerS }, ...inputs],
    devices: ports.map((_, d) => ({
      firedAtS: moments.at(-1)!.states[d]!.firedAtS,
      volts: all(volts[d]!, (moment) => moment.volts[d]!),
      currentA: currents[d]!,
    })),
    errorShare: moments.reduce((most, { apart }) => Math.max(most, apart), run.errorShare),
  };
}
