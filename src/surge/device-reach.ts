import type { SurgeDevice } from './device.ts';
import { excess, restingDevice, watched } from './device-watch.ts';
import type { SurgeCourse } from './surge-course.ts';
import { figureDifference, overTime, potentialFigure } from './surge-figure.ts';

/** When the volts of a course first reach the level of a device that draws nothing in it; null: never. */
export function reachedAtS(course: SurgeCourse, device: SurgeDevice): number | null {
  const volts = deviceVoltsOver(course, device);
  const { timesS } = course.wave;
  let state = restingDevice;
  for (let t = 0; t < timesS.length; t++) {
    if (excess(device, state, timesS[t]!, volts[t]!) > 0) return timesS[t]!;
    state = watched(device, state, timesS[t]!, volts[t]!);
  }
  return null;
}

/** Volts from the one end of a device to the other at all times. */
export function deviceVoltsOver(course: SurgeCourse, { from, to }: Pick<SurgeDevice, 'from' | 'to'>): Float64Array {
  const figure = potentialFigure(course, from);
  return overTime(course, to === null ? figure : figureDifference(figure, potentialFigure(course, to)));
}
