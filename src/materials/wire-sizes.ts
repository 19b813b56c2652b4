import { type Citation, cite } from './source.ts';

export {
  awgNameOfArea,
  gaugeAreaM2,
  gaugeDiameterM,
  gaugeNames,
  gaugeNumber,
  kcmilSizes,
  nameOfNumber,
} from '../units/wire-gauge.ts';

/** Geometry of the American wire gauge: 36 is 0.005 in, 4/0 is 0.46 in, 39 equal steps between. */
export const gaugeSource: Citation = cite('ASTM B258', null, 'definition of the American wire gauge', 'memory');

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
