import type { Study } from '../../study/study.ts';
import { readQuantity } from '../../units/quantity.ts';
import type { Scene } from './scene.ts';

/** Steps that tubes are made in, volts: common practice, no source. */
const stepsV = [90, 150, 230, 350, 600, 1000, 1500, 2500] as const;

/** Least spark-over over the peak voltage of the line (a maker's selection note), and what a tube may fire below its figure (a fifth). */
const margin = 1.5;
const fireFrom = 0.8;

/**
 * Spark-over of a tube for a coax line by the greatest power on it: the least step whose lowest figure is 1.5 times the peak,
 * sqrt(2 P Z SWR). 90 V where nothing on it sends. null: the power is not known.
 */
export function sparkoverFor(scene: Scene, line: Study['lines'][number]): number | null {
  const boxes = line.stops.map((s) => scene.part(s)).filter((p) => p?.section === 'equipment');
  const senders = boxes.filter(
    (p) => p?.kind === 'transceiver' || p?.kind === 'amplifier' || p?.typed.power !== undefined,
  );
  const powers = senders.map((p) => figureOf(p!.typed.power, 'power'));
  if (powers.some((p) => p === null)) return null;
  if (powers.length === 0) return boxes.length > 0 && boxes.every((p) => p!.kind === 'receiver') ? stepsV[0] : null;
  const swr = Math.max(...senders.map((p) => figureOf(p!.typed.swr, 'number') ?? 2));
  const impedanceOhm = figureOf(scene.part(line.id)?.typed.impedance, 'resistance') ?? 50;
  const peakV = Math.sqrt(2 * Math.max(...powers.map((p) => p!)) * impedanceOhm * swr);
  return stepsV.find((v) => v * fireFrom >= margin * peakV) ?? null;
}

/** The greatest figure of a text as typed. */
function figureOf(text: string | undefined, dimension: 'power' | 'resistance' | 'number'): number | null {
  if (text === undefined) return null;
  if (dimension === 'number') return Number.isFinite(Number(text)) ? Number(text) : null;
  const read = readQuantity(text, dimension);
  return read.ok && Number.isFinite(read.interval.high) ? read.interval.high : null;
}
