import { resistivityLimitsOhmM } from './layered-soil.ts';
import type { FitReason } from './sounding-fit.ts';
import { apparentOfReading, pinDistances, pinFactorPerM, type SoundingPins } from './sounding-pins.ts';

export interface SoundingReading {
  readonly pins: SoundingPins;
  /** What the instrument shows. */
  readonly resistanceOhm: number | 'over range';
}

export interface UsableReading {
  /** Position in the list that was given. */
  readonly at: number;
  readonly pins: SoundingPins;
  readonly apparentOhmM: number;
}

/** Readings as apparent resistivities, by spacing, those over range left out; or why they cannot be used. */
export function usableReadings(readings: readonly SoundingReading[]): readonly UsableReading[] | FitReason {
  const usable: UsableReading[] = [];
  for (const [at, { pins, resistanceOhm }] of readings.entries()) {
    if (!isUsable(pins)) return { key: 'pins not usable', reading: at };
    if (resistanceOhm === 'over range') continue;
    const apparentOhmM = apparentOfReading(pins, resistanceOhm);
    const { low, high } = resistivityLimitsOhmM;
    if (!(resistanceOhm > 0 && resistanceOhm < Number.POSITIVE_INFINITY))
      return { key: 'reading not above zero', reading: at };
    if (!(apparentOhmM >= low && apparentOhmM <= high))
      return { key: 'no resistivity of soil', reading: at, apparentOhmM };
    usable.push({ at, pins, apparentOhmM });
  }
  if (usable.length === 0 && readings.length > 0) return { key: 'over range', readings: readings.length };
  return usable.sort((a, b) => nearestM(a.pins) - nearestM(b.pins) || a.at - b.at);
}

/** Those with the same pins together, in order of spacing. */
export function samePins(readings: readonly UsableReading[]): readonly (readonly UsableReading[])[] {
  const groups: UsableReading[][] = [];
  for (const reading of readings) {
    const group = groups.find(([first]) => areSame(first!.pins, reading.pins));
    if (group === undefined) groups.push([reading]);
    else group.push(reading);
  }
  return groups;
}

/** Shortest distance from a current pin to a potential pin. */
export function nearestM(pins: SoundingPins): number {
  return Math.min(...pinDistances(pins).map(({ distanceM }) => distanceM));
}

/** Pins whose reading is less than this share of that of two of them hardly say anything but their own error. */
const leastFactor = 1e-6;

function isUsable(pins: SoundingPins): boolean {
  const distances = pinDistances(pins).map(({ distanceM }) => distanceM);
  const isApart = distances.every((distanceM) => distanceM > 0 && distanceM < 1e6);
  const isShallow = pins.pinDepthM >= 0 && pins.pinDepthM < Math.min(...distances);
  return isApart && isShallow && Math.abs(pinFactorPerM(pins)) * Math.min(...distances) > leastFactor;
}

function areSame(a: SoundingPins, b: SoundingPins): boolean {
  const sorted = (pins: SoundingPins): number[] =>
    pinDistances(pins)
      .map((d) => d.sign * d.distanceM)
      .sort((x, y) => x - y);
  const others = sorted(b);
  return sorted(a).every((distance, at) => Math.abs(distance / others[at]! - 1) < 1e-6);
}
