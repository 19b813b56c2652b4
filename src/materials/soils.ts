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
const bureauMended = cite(
  'National Bureau of Standards Technologic Paper 108, its least figure from the electrodes themselves',
  null,
  'resistance of driven electrodes',
  'memory',
);
const groups = cite('IEEE Std 142 and BS 7430', null, 'resistivity by soil group', 'second-hand');
const std80 = cite('IEEE Std 80', '2000', 'range of earth resistivity', 'memory');
const iec = cite('IEC 60364-5-54', null, 'annex D', 'memory');
const en = cite('EN 50522', null, 'annex J', 'memory');
const bs = cite('BS 7430', null, 'resistivity by geology', 'memory');
const enAndBs = cite('EN 50522 annex J and BS 7430', null, 'resistivity by geology', 'memory');
const iecAndBs = cite('IEC 60364-5-54 annex D and BS 7430', null, 'resistivity by geology', 'memory');
const geology = cite('table of resistivity by geology in a journal article, 2157-7617 6:315', null, 'Table 2', 'read');

/**
 * Ranges by name, for moderate temperature. Where two documents contradict each other outright (marl, schist, alluvium,
 * granite) the range holds both. A kind that documents give one figure for, without a range, is not in the list, but for the
 * four classes of IEEE Std 80: each stands for its own decade, half a decade to either side (our reading).
 */
export const soils: readonly SoilType[] = [
  soil('clay', 3.4, 163, bureau),
  soil('loam', 3.4, 163, bureau),
  soil('clay with sand or gravel', 10.2, 1350, bureau),
  // printed from 590: ten times out. The bureau's ohms of 5 ft rods, from which its table follows, give 59.4 (soils.test.ts)
  soil('stony ground', 59.4, 4580, bureauMended),
  soil('fill', 5.9, 70, bureau),
  soil('sand', 200, 2500, en),
  soil('gravel', 600, 2500, groups),
  soil('clayey gravel', 200, 400, groups),
  // 100 to 800 as copied; the original has 100 to 500 (from memory): the wider one holds both
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
  soil('alluvium', 5, 100, iecAndBs),
  soil('marl', 10, 200, iecAndBs),
  soil('bare stony soil', 1500, 3000, iec),
  soil('grassed stony soil', 300, 500, iec),
  soil('soft limestone', 100, 400, iec),
  soil('limestone', 1000, 5000, iec),
  soil('weathered granite', 1500, 10000, iec),
  soil('granite', 1000, 50000, enAndBs),
  soil('chalk', 30, 100, bs),
  soil('slate', 300, 3000, bs),
  soil('shale', 300, 3000, bs),
  soil('schist', 50, 2000, iecAndBs),
  soil('wet organic soil', 3.2, 32, std80),
  soil('moist soil', 32, 320, std80),
  soil('dry soil', 320, 3200, std80),
  soil('bedrock', 3200, 32000, std80),
  soil('well-graded gravel', 600, 1000, groups),
  soil('poorly graded gravel', 1000, 2500, groups),
  soil('silty or clayey sand with slight plasticity', 30, 80, groups),
  soil('siliceous sand', 200, 3000, iec),
  soil('compact clay', 100, 200, iec),
  soil('jurassic marl', 30, 40, iec),
  soil('cracked limestone', 500, 1000, iec),
  soil('weathered sandstone', 1500, 10000, iec),
  soil('quartzite', 100, 1000, bs),
  soil('crystalline limestone', 100, 1000, bs),
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
