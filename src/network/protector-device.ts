import { type GasTube, gasTubeOf, gasTubes, sparkOverPoints } from '../materials/gas-tubes.ts';
import type { Arrester } from '../site/site.ts';
import type { SparkGap, Varistor } from '../surge/device.ts';
import type { SteepnessPoint } from '../surge/spark-over.ts';
import { type Interval, middle } from '../units/interval.ts';

/** A protector without its two ends. */
export type ProtectorDevice = Omit<SparkGap, 'from' | 'to'> | Omit<Varistor, 'from' | 'to'>;

/** Level of one that nobody typed: what a usual protector of a telephone or a mains line stands at most on a steep rise. Ours. */
export const unknownLevelV = 1000;
/** Arc volts where nobody typed them: the high side of all tubes of the table. */
export const unknownArcV = 30;
/** What an arc adds for each ampere. Ours: a hundred volts at 5 kA. */
const arcOhm = 0.02;

/** Volts of a varistor rise as this power of its current, from a milliampere up (from memory of data sheets: 0.03 to 0.05). */
const varistorPower = 0.04;
const firstA = 1e-3;
const lastA = 1e5;

const clampKinds: ReadonlySet<string> = new Set(['mov', 'silicon', 'mains protector']);

/** By its typed clamping, else by its kind: a varistor, or a tube that fires at the upper end of what such tubes do. */
export function protectorDevice(arrester: Arrester): ProtectorDevice {
  const { kind, clamping, sparkoverV } = arrester;
  const levelV = likely(sparkoverV);
  if (clamping !== null) return varistor(middle(clamping.voltageV)!, middle(clamping.currentA)!);
  if (clampKinds.has(kind)) return varistor(levelV ?? unknownLevelV, firstA);
  const arcV = likely(arrester.arcV);
  const sparkOver = levelV === null ? [steady(unknownLevelV)] : kind === 'spark gap' ? [steady(levelV)] : tube(levelV);
  const most = Math.min(...sparkOver.map((point) => point.sparkOverV.high));
  return {
    kind: 'gap',
    sparkOver,
    side: 'high',
    arcV: Math.min(arcV ?? tableArcV(levelV), mostArcShare * most),
    slopeOhm: arcOhm,
  };
}

/** An arc stands below the volts that make it. */
const mostArcShare = 0.9;

function varistor(volts: number, atA: number): ProtectorDevice {
  const at = (currentA: number) => ({ currentA, volts: volts * (currentA / atA) ** varistorPower });
  return { kind: 'varistor', points: [at(firstA), at(lastA)] };
}

function tableArcV(levelV: number | null): number {
  return (levelV === null ? null : (gasTubeOf(levelV)?.arcV.high ?? null)) ?? unknownArcV;
}

/**
 * The table's own tube of that nominal voltage; of another, its DC figure on a slow rise and on a steep one the volts of the
 * next higher tube of the table, above the last one in proportion.
 */
function tube(nominalV: number): readonly SteepnessPoint[] {
  const next = gasTubes.find((row) => row.nominalV >= nominalV);
  if (next?.nominalV === nominalV) return sparkOverPoints(next);
  const row: GasTube = next ?? gasTubes.at(-1)!;
  const share = next === undefined ? nominalV / row.nominalV : 1;
  const [, ...steep] = sparkOverPoints(row);
  return [
    { slopeVPerS: 2e3, sparkOverV: around(nominalV, row.doubtShare) },
    ...steep.map(({ slopeVPerS, sparkOverV }) => ({
      slopeVPerS,
      sparkOverV: { low: nominalV * (1 - row.doubtShare), high: share * sparkOverV.high },
    })),
  ];
}

function around(volts: number, share: number): Interval {
  return { low: volts * (1 - share), high: volts * (1 + share) };
}

function steady(volts: number): SteepnessPoint {
  return { slopeVPerS: 100, sparkOverV: { low: volts, high: volts } };
}

function likely(figure: Interval | null): number | null {
  return figure === null ? null : middle(figure);
}

/** Of a shorted quarter-wave stub, henry: impedance times length over the speed of light, its length c / 4 f. By hand: Z0 / 4 f. */
export function stubInductance(impedanceOhm: number, bandHz: Interval | null): number {
  return impedanceOhm / (4 * (likely(bandHz) ?? usualBandHz));
}

/** The lowest band that stubs are usually made for. Ours: the longest of them has the most volts. */
const usualBandHz = 50e6;
