import { readCable } from '../../materials/cables.ts';
import type { Equipment, Line } from '../../site/site.ts';
import { exact, type Interval } from '../../units/interval.ts';

/**
 * Greatest peak of the RF voltage on a line, volts: sqrt(2 P Z0 SWR), power P that the radio puts out, watt; by hand: at a
 * voltage maximum the line looks like Z0 SWR. Where nobody knows the SWR: from that of a matched line to twice it, the most
 * that a given forward power makes, since 1 + |reflection| is at most 2.
 */
export function linePeak(powerW: Interval, line: Line, swr: Interval | null): Interval {
  const ohm = impedanceOf(line);
  const matchedV = { low: Math.sqrt(2 * powerW.low * ohm.low), high: Math.sqrt(2 * powerW.high * ohm.high) };
  if (swr === null) return { low: matchedV.low, high: 2 * matchedV.high };
  const times = { low: Math.sqrt(Math.max(1, swr.low)), high: Math.sqrt(Math.max(1, swr.high)) };
  return { low: matchedV.low * times.low, high: matchedV.high * times.high };
}

/** The SWR that the boxes of one line are typed with, the worst of them; null: nobody knows. */
export function lineSwr(boxes: readonly Equipment[]): Interval | null {
  const all = boxes.flatMap((e) => e.swr ?? []);
  if (all.length === 0) return null;
  return { low: Math.max(...all.map((swr) => swr.low)), high: Math.max(...all.map((swr) => swr.high)) };
}

/** Usual designations of 75 ohm coax; the other known ones have 50 (MIL-C-17, from memory); of an unknown cable, either. */
const ohm75 = new Set(['RG-59 class', 'RG-6 class', 'RG-11 class']);

function impedanceOf(line: Line): Interval {
  if (line.impedanceOhm !== null) return line.impedanceOhm;
  const cable = line.cable === null ? null : readCable(line.cable);
  if (cable === null) return { low: 50, high: 75 };
  return exact(ohm75.has(cable.name) ? 75 : 50);
}
