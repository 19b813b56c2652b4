import { siteIndex } from '../bonding/site-index.ts';
import { readCable } from '../materials/cables.ts';
import type { Equipment, Line, Site } from '../site/site.ts';
import { linePeakVolts } from '../surge/line-peak-volts.ts';
import { exact, type Interval, isExact } from '../units/interval.ts';

/**
 * Greatest peak of the RF voltage on a line, volts, of the power that the radio puts out, watt. Where nobody knows the SWR: from
 * that of a matched line to twice it, the most that a given forward power makes, since 1 + |reflection| is at most 2.
 */
export function linePeak(powerW: Interval, line: Line, swr: Interval | null): Interval {
  const ohm = lineImpedance(line);
  const matchedV = { low: linePeakVolts(powerW.low, ohm.low, 1), high: linePeakVolts(powerW.high, ohm.high, 1) };
  if (swr === null) return { low: matchedV.low, high: 2 * matchedV.high };
  return {
    low: linePeakVolts(powerW.low, ohm.low, Math.max(1, swr.low)),
    high: linePeakVolts(powerW.high, ohm.high, Math.max(1, swr.high)),
  };
}

/** The SWR that the boxes of one line are typed with, the worst of them; null: nobody knows. */
export function lineSwr(boxes: readonly Equipment[]): Interval | null {
  const all = boxes.flatMap((e) => e.swr ?? []);
  if (all.length === 0) return null;
  return { low: Math.max(...all.map((swr) => swr.low)), high: Math.max(...all.map((swr) => swr.high)) };
}

/** Usual designations of 75 ohm coax; the other known ones have 50 (MIL-C-17, from memory); of an unknown cable, either. */
const ohm75 = new Set(['RG-59 class', 'RG-6 class', 'RG-11 class']);

export function lineImpedance(line: Line): Interval {
  if (line.impedanceOhm !== null) return line.impedanceOhm;
  const cable = line.cable === null ? null : readCable(line.cable);
  if (cable === null) return { low: 50, high: 75 };
  return exact(ohm75.has(cable.name) ? 75 : 50);
}

/** Boxes that a line meets. */
export function boxesOnLine(line: Line, site: Site): readonly Equipment[] {
  const stops = new Set(
    line.path.flatMap((stop) => (stop.is === 'part' && stop.at.part !== null ? [stop.at.part] : [])),
  );
  const index = siteIndex(site);
  const met = [...stops].filter((id) => index.parts.get(id)?.section === 'equipment');
  // the order of the file, looked for only where there is one
  if (met.length < 2) return met.map((id) => index.parts.get(id) as Equipment).filter((e) => e.present !== 'no');
  return site.equipment.filter((e) => e.present !== 'no' && stops.has(e.id));
}

const senders = /transceiver|transmitter|amplifier|repeater|radio/;

/** The most that any box on the line puts out, watt; 0 where all only receive; null: a box that sends has no figure. */
export function linePower(boxes: readonly Equipment[]): Interval | null {
  const sending = boxes.filter((e) => e.powerW !== null || senders.test(e.kind));
  const amplifiers = sending.filter((e) => e.kind === 'amplifier');
  const last = amplifiers.length > 0 ? amplifiers : sending;
  if (last.some((e) => e.powerW === null)) return null;
  const all = [...last, ...sending].flatMap((e) => e.powerW ?? []);
  return {
    low: Math.max(0, ...all.map((power) => power.low)),
    high: Math.max(0, ...all.map((power) => power.high)),
  };
}

/** A tube of one typed voltage fires this share below or above it: usual tolerance, from memory. */
const tolerance = 0.2;

/** Lowest and highest spark-over, volts: of a single typed voltage, its tolerance. */
export function sparkOverBand(sparkoverV: Interval): Interval {
  if (!isExact(sparkoverV)) return sparkoverV;
  return { low: (1 - tolerance) * sparkoverV.low, high: (1 + tolerance) * sparkoverV.high };
}
