import { notNegative, positive } from './positive.ts';

/**
 * Greatest peak of the RF voltage on a line, volts: sqrt(2 P Z0 SWR), with P the power that reaches the load, watt (the peak
 * envelope power where it is modulated), Z0 the line's impedance, ohm, and SWR 1 or more. By hand: at a voltage maximum the
 * line looks like Z0 SWR. Loss along the line left out: the high side.
 */
export function linePeakVolts(deliveredW: number, impedanceOhm: number, swr: number): number {
  return Math.sqrt(2 * notNegative(deliveredW, 'power') * positive(impedanceOhm, 'impedance') * checkSwr(swr));
}

/** The same from the forward power, as a meter shows it: sqrt(2 Pf Z0) (1 + |reflection|). At most twice that of SWR 1. */
export function linePeakVoltsForward(forwardW: number, impedanceOhm: number, swr: number): number {
  return linePeakVolts(forwardW, impedanceOhm, 1) * (1 + reflectionOf(swr));
}

/** Peaks of several carriers on one line add up, volts. */
export function sumOfCarriers(peaksV: readonly number[]): number {
  return peaksV.reduce((sum, peak) => sum + notNegative(peak, 'peak of a carrier'), 0);
}

/** Magnitude of the reflection that goes with an SWR: (SWR - 1) / (SWR + 1). */
export function reflectionOf(swr: number): number {
  return (checkSwr(swr) - 1) / (swr + 1);
}

/** The most power, watt, that stays below a peak voltage: the same formula the other way round. */
export function powerOfPeakVolts(peakV: number, impedanceOhm: number, swr: number): number {
  return notNegative(peakV, 'peak') ** 2 / (2 * positive(impedanceOhm, 'impedance') * checkSwr(swr));
}

function checkSwr(swr: number): number {
  if (!(swr >= 1 && swr < Infinity)) throw new RangeError(`an SWR is 1 or more and finite: ${swr}`);
  return swr;
}
