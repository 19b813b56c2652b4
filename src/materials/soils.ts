import type { Interval } from '../units/interval.ts';
import { nearName } from '../units/near-name.ts';
import { type Citation, cite } from './source.ts';

/** A kind of soil by name, with the range that its resistivity is found in at moderate temperature. */
export interface SoilType {
  readonly name: string;
  readonly resistivityOhmM: Interval;
  readonly source: Citation;
}

const bureau = cite(
  'National Bureau of Standards Technologic Paper 108, as in IEEE Std 142',
  null,
  'resistivity of soils',
  'read',
);
const groups = cite('IEEE Std 142 and BS 7430', null, 'resistivity by soil group', 'second-hand');
const std80 = cite('IEEE Std 80', '2000', 'range of earth resistivity', 'memory');
const iec = cite('IEC 60364-5-54', null, 'annex D', 'memory');
const en = cite('EN 50522', null, 'annex J', 'memory');
const bs = cite('BS 7430', null, 'resistivity by geology', 'memory');
const geology = cite('table of resistivity by geology in a journal article, 2157-7617 6:315', null, 'Table 2', 'read');

export const soils: readonly SoilType[] = [
  soil('clay', 3.4, 163, bureau),
  soil('loam', 3.4, 163, bureau),
  soil('clay with sand or gravel', 10.2, 1350, bureau),
  soil('stony ground', 590, 4580, bureau),
  soil('fill', 5.9, 70, bureau),
  soil('sand', 200, 2500, en),
  soil('gravel', 600, 2500, groups),
  soil('clayey gravel', 200, 400, groups),
  soil('silty sand', 100, 800, groups),
  soil('clayey sand', 50, 200, groups),
  soil('sandy clay', 30, 215, geology),
  soil('boulder clay', 15, 35, geology),
  soil('dry clay', 50, 150, geology),
  soil('dry sand', 80, 1050, geology),
  soil('saturated sand and gravel', 30, 225, geology),
  soil('mudstone', 20, 120, geology),
  soil('siltstone', 20, 150, geology),
  soil('sandstone', 200, 5000, geology),
  soil('marsh', 5, 40, en),
  soil('humus', 10, 150, iec),
  soil('peat', 5, 100, iec),
  soil('alluvium', 20, 100, iec),
  soil('marl', 100, 200, iec),
  soil('bare stony soil', 1500, 3000, iec),
  soil('grassed stony soil', 300, 500, iec),
  soil('soft limestone', 100, 400, iec),
  soil('limestone', 1000, 5000, iec),
  soil('weathered granite', 1500, 10000, iec),
  soil('granite', 1000, 50000, en),
  soil('chalk', 30, 100, bs),
  soil('slate', 300, 3000, bs),
  soil('shale', 300, 3000, bs),
  soil('schist', 50, 300, iec),
  soil('wet organic soil', 10, 10, std80),
  soil('moist soil', 100, 100, std80),
  soil('dry soil', 1000, 1000, std80),
  soil('bedrock', 10000, 10000, std80),
];

export const soilNames: readonly string[] = soils.map((s) => s.name);

const otherNames: Readonly<Record<string, string>> = {
  swamp: 'marsh',
  bog: 'marsh',
  rock: 'bedrock',
  'sand and gravel': 'stony ground',
  'gravel with stones': 'stony ground',
  'made ground': 'fill',
  'wet organic': 'wet organic soil',
  'very dry clay': 'dry clay',
  topsoil: 'humus',
};

/** The kind of soil that a text names; null when it names none. */
export function readSoil(text: string): SoilType | null {
  const plain = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s-]+/g, ' ')
    .trim();
  const name = otherNames[plain] ?? plain;
  return soils.find((s) => s.name === name) ?? null;
}

/** The kind that was most likely meant; null when none is close. */
export function nearSoil(text: string): string | null {
  return nearName(text, soilNames);
}

function soil(name: string, low: number, high: number, source: Citation): SoilType {
  return { name, resistivityOhmM: { low, high }, source };
}
