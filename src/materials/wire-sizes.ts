import { circularMilM2 } from '../units/unit-table.ts';
import { type Citation, cite } from './source.ts';

/** Geometry of the American wire gauge: 36 is 0.005 in, 4/0 is 0.46 in, 39 equal steps between. */
export const gaugeSource: Citation = cite('ASTM B258', null, 'definition of the American wire gauge', 'memory');

const finest = 40;

/** Gauges from 24 to 4/0, thin to thick: `24`, …, `1`, `1/0`, `2/0`, `3/0`, `4/0`. */
export const gaugeNames: readonly string[] = [...Array.from({ length: 28 }, (_, i) => nameOfNumber(24 - i))];

/** Sizes above 4/0, in kcmil. */
export const kcmilSizes: readonly number[] = [250, 300, 350, 400, 500, 600, 700, 750, 800, 900, 1000];

/** Diameter of a solid wire of gauge n (0, -1, -2, -3 for 1/0 to 4/0), metres: 0.127 mm × 92^((36 − n)/39). */
export function gaugeDiameterM(gauge: number): number {
  return 0.127e-3 * 92 ** ((36 - gauge) / 39);
}

/** Metal area of gauge n, square metres; the same for solid and stranded wire. */
export function gaugeAreaM2(gauge: number): number {
  return (Math.PI / 4) * gaugeDiameterM(gauge) ** 2;
}

/**
 * The number of a gauge from `6`, `2/0`, `00`; null for what is no gauge between 40 and 4/0. `0` is 1/0.
 */
export function gaugeNumber(text: string): number | null {
  const aught = /^([1-4])\/0$/.exec(text);
  if (aught !== null) return 1 - Number(aught[1]);
  if (/^0{1,4}$/.test(text)) return 1 - text.length;
  if (!/^[1-9]\d?$/.test(text)) return null;
  return Number(text) <= finest ? Number(text) : null;
}

/** `6`, `2/0` for a gauge number. */
export function nameOfNumber(gauge: number): string {
  return gauge > 0 ? String(gauge) : `${1 - gauge}/0`;
}

/**
 * The trade name of an area that is a gauge or a kcmil size to within 1 % (neighbours lie 26 % or, above 4/0, 7 % apart,
 * metric sizes 1.3 % or more away): `6 AWG`, `2/0 AWG`, `250 kcmil`; null for any other area.
 */
export function awgNameOfArea(areaM2: number): string | null {
  const near = (size: number): boolean => Math.abs(areaM2 / size - 1) <= 0.01;
  const gauge = gaugeNames.find((name) => near(gaugeAreaM2(gaugeNumber(name)!)));
  if (gauge !== undefined) return `${gauge} AWG`;
  const kcmil = kcmilSizes.find((size) => near(size * 1000 * circularMilM2));
  return kcmil === undefined ? null : `${kcmil} kcmil`;
}

/** A metric size and the greatest resistance that a copper conductor of it may have. */
export interface MetricSize {
  readonly areaMm2: number;
  /** Plain annealed copper, stranded (class 2), at 20 °C. */
  readonly mostOhmPerKm: number;
  readonly source: Citation;
}

const quoted = cite('IEC 60228', null, 'maximum resistance of stranded copper conductors at 20 °C', 'second-hand');
const recalled = cite('IEC 60228', null, 'maximum resistance of stranded copper conductors at 20 °C', 'memory');

export const metricSizes: readonly MetricSize[] = [
  { areaMm2: 1.5, mostOhmPerKm: 12.1, source: quoted },
  { areaMm2: 2.5, mostOhmPerKm: 7.41, source: quoted },
  { areaMm2: 4, mostOhmPerKm: 4.61, source: quoted },
  { areaMm2: 6, mostOhmPerKm: 3.08, source: quoted },
  { areaMm2: 10, mostOhmPerKm: 1.83, source: quoted },
  { areaMm2: 16, mostOhmPerKm: 1.15, source: quoted },
  { areaMm2: 25, mostOhmPerKm: 0.727, source: quoted },
  { areaMm2: 35, mostOhmPerKm: 0.524, source: quoted },
  { areaMm2: 50, mostOhmPerKm: 0.387, source: quoted },
  { areaMm2: 70, mostOhmPerKm: 0.268, source: quoted },
  { areaMm2: 95, mostOhmPerKm: 0.193, source: quoted },
  { areaMm2: 120, mostOhmPerKm: 0.153, source: quoted },
  { areaMm2: 150, mostOhmPerKm: 0.124, source: recalled },
  { areaMm2: 185, mostOhmPerKm: 0.0991, source: recalled },
  { areaMm2: 240, mostOhmPerKm: 0.0754, source: recalled },
];

/** The metric size that an area is, to a part in a thousand; null for any other area. */
export function metricSizeOf(areaM2: number): MetricSize | null {
  return metricSizes.find((size) => Math.abs(areaM2 / (size.areaMm2 * 1e-6) - 1) <= 1e-3) ?? null;
}
