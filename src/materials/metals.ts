import { exact, type Interval } from '../units/interval.ts';
import { nearName } from '../units/near-name.ts';
import { type Citation, cite } from './source.ts';

/** The set of constants that one document uses for the adiabatic heating of a conductor by a lightning current. */
export interface HeatingConstants {
  /** At the start, taken as 20 °C. */
  readonly resistivityOhmM: number;
  readonly temperatureCoefficientPerK: number;
  readonly densityKgPerM3: number;
  readonly meltingCelsius: number;
  readonly latentHeatJPerKg: number | null;
  readonly specificHeatJPerKgK: number;
  readonly source: Citation;
}

/** A metal as bulk material. Alloys and clad metals carry ranges; null is not known. */
export interface Metal {
  readonly name: string;
  /** At 20 °C. */
  readonly resistivityOhmM: Interval | null;
  /** Referred to 20 °C. */
  readonly temperatureCoefficientPerK: Interval | null;
  readonly densityKgPerM3: number | null;
  readonly specificHeatJPerKgK: number | null;
  readonly meltingCelsius: number | null;
  readonly relativePermeability: Interval;
  /** Constants for heating by a surge; null: no document gives them as one set. */
  readonly heating: HeatingConstants | null;
  /** Name of the row of the galvanic series that its surface belongs to; null: not in it. */
  readonly surface: string | null;
  readonly source: Citation;
}

const iacs = cite('IEC 60028, international standard of resistance for copper', '1925', null, 'memory');
const hardDrawn = cite('IEEE Std 80', '2000', 'Table 1, hard-drawn copper', 'memory');
const wireTable = cite('IEC 60889 (low figure) and IEC 62305-1 annex D (high figure)', null, null, 'memory');
const clad = cite('IEEE Std 80', '2000', 'Table 1, copper-clad steel wire 40 % to copper-clad rod 20 %', 'memory');
const mild = cite(
  'IEC 62305-1 annex D (low figure) and IEEE Std 80 Table 1, 1020 steel (high figure)',
  null,
  null,
  'memory',
);
const zincCoated = cite(
  'IEC 62305-1 annex D (low figure) and IEEE Std 80 Table 1, zinc-coated rod (high figure)',
  null,
  null,
  'memory',
);
const austenitic = cite('IEC 62305-1 annex D and IEEE Std 80 Table 1, 304 stainless', null, null, 'memory');
const tables = cite('handbook tables of physical constants', null, null, 'memory');
const annexD = cite('IEC 62305-1', '2010', 'annex D, physical characteristics of typical materials', 'memory');

const nonMagnetic = exact(1);
/** Plain steel at the fields of interest: nobody knows it better than this without a measurement. */
const magnetic: Interval = { low: 50, high: 2000 };

const heatingOfCopper = heating(17.8, 3.92e-3, 8920, 1080, 209e3, 385);
const heatingOfAluminium = heating(29, 4.0e-3, 2700, 658, 397e3, 908);
const heatingOfSteel = heating(120, 6.5e-3, 7700, 1530, 272e3, 469);
const heatingOfStainless = heating(700, 0.8e-3, 8000, 1500, null, 500);

/** All metals known, in the order they are offered in. */
export const metals: readonly Metal[] = [
  metal('copper', [17.241], [3.93e-3], 8890, 385, 1083, nonMagnetic, heatingOfCopper, 'copper', iacs),
  metal('tinned copper', [17.241, 17.77], [3.93e-3], 8890, 385, 1083, nonMagnetic, heatingOfCopper, 'tin plate', iacs),
  metal('hard-drawn copper', [17.77], [3.81e-3], 8890, 385, 1083, nonMagnetic, heatingOfCopper, 'copper', hardDrawn),
  metal(
    'aluminium',
    [28.264, 29],
    [4.0e-3, 4.03e-3],
    2700,
    908,
    658,
    nonMagnetic,
    heatingOfAluminium,
    'wrought aluminium',
    wireTable,
  ),
  metal('cast aluminium', null, null, 2700, 908, null, nonMagnetic, null, 'cast aluminium', tables),
  metal('copper-clad aluminium', null, null, null, null, 658, nonMagnetic, null, 'copper', tables),
  metal('copper-clad steel', [44, 86.2], [3.78e-3], 8150, null, 1083, { low: 1, high: 2000 }, null, 'copper', clad),
  metal(
    'galvanised steel',
    [120, 201],
    [3.2e-3, 6.5e-3],
    7800,
    469,
    419,
    magnetic,
    heatingOfSteel,
    'galvanised steel',
    zincCoated,
  ),
  metal(
    'stainless steel',
    [700, 720],
    [0.8e-3, 1.3e-3],
    8000,
    500,
    1400,
    { low: 1, high: 1.1 },
    heatingOfStainless,
    'stainless steel 18 % Cr',
    austenitic,
  ),
  metal(
    'steel',
    [120, 159],
    [3.77e-3, 6.5e-3],
    7800,
    469,
    1510,
    magnetic,
    heatingOfSteel,
    'iron and plain steel',
    mild,
  ),
  metal('iron', [97, 1000], [3.8e-3, 6.5e-3], 7200, 460, 1150, magnetic, null, 'iron and plain steel', tables),
  metal('brass', [62, 66], [1.5e-3, 2e-3], 8500, 380, 900, nonMagnetic, null, 'low brass and bronze', tables),
  metal('high brass', [62, 66], [1.5e-3, 2e-3], 8500, 380, 900, nonMagnetic, null, 'high brass', tables),
  metal('bronze', [115, 246], [0.5e-3, 2e-3], 8800, 380, 950, nonMagnetic, null, 'low brass and bronze', tables),
  metal('lead', [208], [3.9e-3, 4.2e-3], 11340, 129, 327, nonMagnetic, null, 'lead', tables),
  metal('zinc', [59], [3.7e-3, 4.2e-3], 7140, 388, 419, nonMagnetic, null, 'zinc', tables),
  metal('tin', [115], [4.2e-3, 4.7e-3], 7290, 227, 232, nonMagnetic, null, 'tin plate', tables),
  metal('tin-lead solder', [145, 150], null, 8500, 170, 183, nonMagnetic, null, 'tin-lead solder', tables),
  metal('nickel', [69.3], [6e-3], 8900, 444, 1455, { low: 1, high: 600 }, null, 'nickel and titanium', tables),
  metal('titanium', [420], [3.8e-3], 4500, 523, 1668, nonMagnetic, null, 'nickel and titanium', tables),
  metal('silver', [15.9], [3.8e-3], 10490, 235, 962, nonMagnetic, null, 'silver', tables),
  metal('magnesium', [43.9], [4.1e-3], 1740, 1023, 650, nonMagnetic, null, 'magnesium', tables),
];

/** Names that a person may type, the table's own first. */
export const metalNames: readonly string[] = metals.map((m) => m.name);

/** Other spellings → the table's name, in the plain form of `plainMetal`. */
const otherNames: Readonly<Record<string, string>> = {
  cu: 'copper',
  'annealed copper': 'copper',
  'soft copper': 'copper',
  'soft drawn copper': 'copper',
  'hard drawn copper': 'hard-drawn copper',
  tinned: 'tinned copper',
  'tin plated copper': 'tinned copper',
  al: 'aluminium',
  alu: 'aluminium',
  'wrought aluminium': 'aluminium',
  'copper clad': 'copper-clad steel',
  'copper coated': 'copper-clad steel',
  'copper coated steel': 'copper-clad steel',
  'copper bonded': 'copper-clad steel',
  'copper bonded steel': 'copper-clad steel',
  'copper plated steel': 'copper-clad steel',
  ccs: 'copper-clad steel',
  galvanised: 'galvanised steel',
  'hot dip galvanised': 'galvanised steel',
  'hot dip galvanised steel': 'galvanised steel',
  'hot dipped galvanised steel': 'galvanised steel',
  'zinc coated steel': 'galvanised steel',
  'zinc plated steel': 'galvanised steel',
  'galvanised iron': 'galvanised steel',
  stainless: 'stainless steel',
  inox: 'stainless steel',
  'mild steel': 'steel',
  'carbon steel': 'steel',
  'plain steel': 'steel',
  'black steel': 'steel',
  'bare steel': 'steel',
  'reinforcing steel': 'steel',
  'cast iron': 'iron',
  'wrought iron': 'iron',
  'ductile iron': 'iron',
  'yellow brass': 'high brass',
  'phosphor bronze': 'bronze',
  'silicon bronze': 'bronze',
  solder: 'tin-lead solder',
};

const byPlainName: ReadonlyMap<string, Metal> = new Map([
  ...metals.map((m): [string, Metal] => [plainMetal(m.name), m]),
  ...Object.entries(otherNames).map(([other, name]): [string, Metal] => [other, metals.find((m) => m.name === name)!]),
]);

/** The metal that a text names, in any of the usual spellings; null when it names none. */
export function readMetal(text: string): Metal | null {
  return byPlainName.get(plainMetal(text)) ?? null;
}

/** The metal's name that was most likely meant; null when none is close. */
export function nearMetal(text: string): string | null {
  return nearName(plainMetal(text), metalNames);
}

/** All plain spellings, longest first: for finding a metal inside a longer text. */
export const plainMetalNames: readonly string[] = [...byPlainName.keys()].sort(
  (a, b) => b.length - a.length || (a < b ? -1 : 1),
);

/** Small letters, spaces for hyphens, British spelling. */
export function plainMetal(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s-]+/g, ' ')
    .replaceAll('aluminum', 'aluminium')
    .replaceAll('galvanized', 'galvanised')
    .trim();
}

function metal(
  name: string,
  resistivityNanoOhmM: readonly number[] | null,
  temperatureCoefficientPerK: readonly number[] | null,
  densityKgPerM3: number | null,
  specificHeatJPerKgK: number | null,
  meltingCelsius: number | null,
  relativePermeability: Interval,
  heatingConstants: HeatingConstants | null,
  surface: string | null,
  source: Citation,
): Metal {
  return {
    name,
    resistivityOhmM: range(resistivityNanoOhmM, 1e-9),
    temperatureCoefficientPerK: range(temperatureCoefficientPerK, 1),
    densityKgPerM3,
    specificHeatJPerKgK,
    meltingCelsius,
    relativePermeability,
    heating: heatingConstants,
    surface,
    source,
  };
}

function range(figures: readonly number[] | null, unit: number): Interval | null {
  const [low, high] = figures ?? [];
  return low === undefined ? null : { low: low * unit, high: (high ?? low) * unit };
}

function heating(
  resistivityNanoOhmM: number,
  temperatureCoefficientPerK: number,
  densityKgPerM3: number,
  meltingCelsius: number,
  latentHeatJPerKg: number | null,
  specificHeatJPerKgK: number,
): HeatingConstants {
  const resistivityOhmM = resistivityNanoOhmM * 1e-9;
  return {
    resistivityOhmM,
    temperatureCoefficientPerK,
    densityKgPerM3,
    meltingCelsius,
    latentHeatJPerKg,
    specificHeatJPerKgK,
    source: annexD,
  };
}
