import { type Citation, cite } from './source.ts';

/** The figures that one document sizes a conductor against fusing with, by the material's usual name. */
export interface FusingMetal {
  readonly name: string;
  /** At 20 °C. */
  readonly resistivityOhmM: number;
  readonly temperatureCoefficientPerK: number;
  /** 1 / coefficient at 0 °C: how far below 0 °C its resistance would vanish. */
  readonly zeroBelowK: number;
  readonly fusingCelsius: number;
  /** Heat that a volume takes per degree. */
  readonly heatJPerM3K: number;
  readonly source: Citation;
}

const table1 = cite('IEEE Std 80', '2000', 'Table 1, material constants', 'memory');

/** Materials of earthing conductors. Clad steel melts with its skin; its core lasts longer. */
export const fusingMetals: readonly FusingMetal[] = [
  row('annealed copper', 0.00393, 234, 1083, 1.72, 3.42),
  row('hard-drawn copper', 0.00381, 242, 1084, 1.78, 3.42),
  row('copper-clad steel wire 40 %', 0.00378, 245, 1084, 4.4, 3.85),
  row('copper-clad steel wire 30 %', 0.00378, 245, 1084, 5.86, 3.85),
  row('copper-clad steel rod', 0.00378, 245, 1084, 8.62, 3.85),
  row('aluminium', 0.00403, 228, 657, 2.86, 2.56),
  row('steel 1020', 0.0016, 605, 1510, 15.9, 3.28),
  row('zinc-coated steel rod', 0.0032, 293, 419, 20.1, 3.93),
  row('stainless steel 304', 0.0013, 749, 1400, 72, 4.03),
];

/** A round wire of a metal that fuses in still air at I = factor x diameter^1.5, ampere and metre. */
export interface SteadyFusing {
  readonly name: string;
  readonly factorAPerM1p5: number;
  readonly source: Citation;
}

const preece = cite('W. H. Preece, Proc. Roy. Soc. 1884 to 1888', null, 'fusing of wire by a steady current', 'memory');
const preeceQuoted: Citation = { ...preece, provenance: 'second-hand' };

/** Factors as printed for millimetres, 80 for copper, times 1000^1.5. */
export const steadyFusing: readonly SteadyFusing[] = [
  { name: 'copper', factorAPerM1p5: 80 * 1000 ** 1.5, source: preeceQuoted },
  { name: 'aluminium', factorAPerM1p5: 59.2 * 1000 ** 1.5, source: preece },
  { name: 'iron', factorAPerM1p5: 24.6 * 1000 ** 1.5, source: preece },
  { name: 'tin', factorAPerM1p5: 12.8 * 1000 ** 1.5, source: preece },
];

function row(
  name: string,
  temperatureCoefficientPerK: number,
  zeroBelowK: number,
  fusingCelsius: number,
  microOhmCm: number,
  heatJPerCm3K: number,
): FusingMetal {
  const [resistivityOhmM, heatJPerM3K] = [microOhmCm * 1e-8, heatJPerCm3K * 1e6];
  return {
    name,
    resistivityOhmM,
    temperatureCoefficientPerK,
    zeroBelowK,
    fusingCelsius,
    heatJPerM3K,
    source: table1,
  };
}
