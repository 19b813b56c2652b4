import { deviceVolts, type SurgeDevice } from './device.ts';
import type { DeviceMoment, StepAsked } from './device-moment.ts';
import { portCurrents } from './port-currents.ts';
import { cubicAt, stepPoints } from './port-step.ts';
import {
  addInput,
  keptStates,
  type PortSystem,
  portBlock,
  portVolts,
  type StepInput,
  slopesOf,
} from './port-system.ts';
import { radauPoints } from './radau.ts';
import { currentAt, slopeAt, type Wave } from './wave.ts';

/** One step solved. */
export interface SolvedStep {
  /** Modes at its end. */
  readonly z: Float64Array;
  /** Of each device at `stepPoints`. */
  readonly currents: readonly Float64Array[];
  /** Of each device at the Radau points. */
  readonly volts: readonly Float64Array[];
}

/** Solves steps in which the devices that are on carry what suits them and the network; null: no such currents are found. */
export function stepSolver(
  system: PortSystem,
  wave: Wave,
  devices: readonly SurgeDevice[],
): (moment: DeviceMoment, asked: StepAsked) => SolvedStep | null {
  const { ports, source, stepOf } = system;
  const ohmOf = portOhms(system);
  return (moment, { startS, stepS }) => {
    const step = stepOf(stepS);
    const timesS = stepPoints.map((point) => startS + point * stepS);
    const stroke: StepInput = {
      drive: source,
      values: Float64Array.from(timesS, (time) => currentAt(wave, time)),
      slopes: Float64Array.from(timesS, (time) => slopeAt(wave, time)),
    };
    const on = devices.flatMap((_, d) => (moment.states[d]!.isOn ? [d] : []));
    const currents = devices.map((_, d) => Float64Array.of(moment.currentA[d]!, 0, 0, 0));
    const inputs = (): readonly (StepInput | null)[] => [
      stroke,
      ...ports.map(({ drive }, d) =>
        moment.states[d]!.isOn ? { drive, values: currents[d]!, slopes: slopesOf(currents[d]!, stepS) } : null,
      ),
    ];
    const statesUnder = (given: readonly (StepInput | null)[]) => {
      const z = keptStates(step, moment.z);
      for (const input of given) if (input !== null) addInput(step, input, z);
      return z;
    };
    const voltsUnder = (given: readonly (StepInput | null)[], z: readonly Float64Array[], d: number) =>
      Float64Array.from(radauPoints, (_, s) => portVolts(ports[d]!, z[s]!, given, s));
    if (on.length > 0) {
      const begun = inputs();
      const z = statesUnder(begun);
      const solved = portCurrents({
        openV: Float64Array.from(on.flatMap((d) => [...voltsUnder(begun, z, d)])),
        ohm: ohmOf(stepS, on),
        voltsOf: (port, currentA) => deviceVolts(devices[on[port]!]!, moment.states[on[port]!]!.sign, currentA),
        guessA: Float64Array.from(on.flatMap((d) => guess(devices[d]!, moment, d, stepS))),
      });
      if (solved === null) return null;
      on.forEach((d, i) => {
        currents[d]!.set(solved.subarray(3 * i, 3 * i + 3), 1);
      });
    }
    const all = inputs();
    const z = statesUnder(all);
    return { z: z[2]!, currents, volts: devices.map((_, d) => voltsUnder(all, z, d)) };
  };
}

/** As the step before foretells; else what it has, or the least that a varistor takes note of. */
function guess(
  device: SurgeDevice,
  { currents, currentA, states, stepS: lastS }: DeviceMoment,
  d: number,
  stepS: number,
) {
  const least = device.kind === 'varistor' ? states[d]!.sign * device.points[0]!.currentA : 0;
  return radauPoints.map((point) => {
    if (currents !== null) return cubicAt(currents[d]!, 1 + (point * stepS) / lastS);
    return currentA[d]! === 0 ? least : currentA[d]!;
  });
}

/** The blocks of `portBlock` of the ports that are on, each worked out once for a length of step. */
function portOhms(system: PortSystem): (stepS: number, on: readonly number[]) => Float64Array {
  const known = new Map<number, Map<number, Float64Array>>();
  const count = system.ports.length;
  return (stepS, on) => {
    const blocks = known.get(stepS) ?? new Map<number, Float64Array>();
    known.set(stepS, blocks);
    const size = 3 * on.length;
    const ohm = new Float64Array(size * size);
    on.forEach((p, i) => {
      on.forEach((n, j) => {
        const block = blocks.get(p * count + n) ?? portBlock(system, stepS, p, n);
        blocks.set(p * count + n, block);
        for (let s = 0; s < 3; s++) ohm.set(block.subarray(3 * s, 3 * s + 3), (3 * i + s) * size + 3 * j);
      });
    });
    return ohm;
  };
}
