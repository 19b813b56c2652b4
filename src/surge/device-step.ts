import type { SurgeDevice } from './device.ts';
import { judgeDevices } from './device-judge.ts';
import type { DeviceMoment, StepAsked } from './device-moment.ts';
import { type PortSystem, slopesOf } from './port-system.ts';
import { stepSolver } from './step-solver.ts';
import type { Wave } from './wave.ts';

/** The end of a step, or null where it must be shorter; and how long the next one may be. */
export type DeviceAdvance = (
  moment: DeviceMoment,
  asked: StepAsked,
) => { readonly moment: DeviceMoment | null; readonly wantedS: number };

/** Most that a step may differ from what the one before foretold, over the largest current; under the least, steps grow. Ours. */
const mostApart = 5e-3;
const leastApart = 2e-4;
/** After something switched, steps begin anew at this share of the last: currents may jump in the first of them. Ours. */
const anewShare = 1 / 16;

/** Error where a device and the network do not agree on a current however short the step: no device of this room does that. */
export function deviceAdvance(system: PortSystem, wave: Wave, devices: readonly SurgeDevice[]): DeviceAdvance {
  const solve = stepSolver(system, wave, devices);
  return (moment, asked) => {
    const { startS, stepS, isLeast } = asked;
    const halve = { moment: null, wantedS: stepS / 2 };
    const solved = solve(moment, asked);
    if (solved === null) {
      if (isLeast) throw new Error('a device and its network do not agree on a current');
      return halve;
    }
    const judged = judgeDevices(devices, moment, asked, solved);
    if (!isLeast && (judged.isTooFar || judged.apart > mostApart)) return halve;
    const isOn = (d: number) => judged.states[d]!.isOn;
    const isSame = moment.states.every((state, d) => state.isOn === isOn(d));
    // nothing is foretold by a step in which currents may have jumped, nor by one that could not be made short enough
    const isForced = judged.apart > mostApart;
    const isSmooth = isSame && !moment.hasSwitched && !isForced;
    const atEnd = (of: (values: Float64Array) => number) =>
      Float64Array.from(solved.currents, (values, d) => (isOn(d) ? of(values) : 0));
    const grows = moment.currents !== null && judged.apart < leastApart;
    return {
      moment: {
        timeS: startS + stepS,
        stepS,
        z: solved.z,
        currentA: atEnd((values) => values[3]!),
        slopeAPerS: atEnd((values) => slopesOf(values, stepS)[3]!),
        volts: Float64Array.from(solved.volts, (values) => values[2]!),
        states: judged.states,
        currents: isSmooth ? solved.currents : null,
        hasSwitched: !isSame,
        apart: judged.apart,
      },
      wantedS: isSame ? (grows || isForced ? 2 : 1) * stepS : anewShare * stepS,
    };
  };
}
