import type { Interval } from './interval.ts';

/** Hours as nobody knows them better: to the half below ten, whole from there on, outwards; `1 to 3.5 h`, `over 4 h`. */
export function hoursText(hours: Interval): string {
  const low = Math.floor(steps(hours.low)) / perHour(hours.low);
  if (hours.high === Infinity) return `over ${low} h`;
  const high = Math.ceil(steps(hours.high) - 1e-9) / perHour(hours.high);
  return low === high ? `${high} h` : `${low} to ${high} h`;
}

function perHour(hours: number): number {
  return hours < 10 ? 2 : 1;
}

function steps(hours: number): number {
  return hours * perHour(hours);
}
