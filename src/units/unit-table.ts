import type { Dimension } from './dimension.ts';

/** One way to write a unit, and how many SI base units it is. */
export interface Unit {
  readonly spelling: string;
  readonly factor: number;
  /** Added after the factor; only temperatures on a scale have one. */
  readonly offset: number;
}

// International foot and inch, 1959: exact. Other factors are exact by definition unless noted.
export const footM = 0.3048;
export const inchM = 0.0254;
/** Circular mil: area of a circle one thousandth of an inch across. */
export const circularMilM2 = (Math.PI / 4) * (inchM / 1000) ** 2;
/** International avoirdupois pound, 1959: exact. */
export const poundKg = 0.45359237;

const prefixes: Readonly<Record<string, readonly [word: string, factor: number]>> = {
  n: ['nano', 1e-9],
  u: ['micro', 1e-6],
  m: ['milli', 1e-3],
  k: ['kilo', 1e3],
  M: ['mega', 1e6],
  G: ['giga', 1e9],
};

const ohms: readonly Unit[] = [
  ...metric(['ohm', 'ohms'], ['ohm', 'ohms'], 'numkMG'),
  ...spelled(1e3, ['kilohm', 'kilohms']),
  ...spelled(1e6, ['megohm', 'megohms']),
];

/**
 * Every spelling that is read, by dimension, in the plain form of `plainUnit`. The first few that a person would type are
 * in `usualUnits`.
 */
export const unitsOf: Readonly<Record<Dimension, readonly Unit[]>> = {
  length: [
    ...spelled(footM, ['ft', "'", 'foot', 'feet']),
    ...spelled(inchM, ['in', '"', "''", 'inch', 'inches', 'ins']),
    ...metric(['m'], ['metre', 'metres', 'meter', 'meters'], 'umk'),
    ...spelled(0.01, ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters']),
    ...spelled(3 * footM, ['yd', 'yard', 'yards']),
    ...spelled(5280 * footM, ['mi', 'mile', 'miles']),
    ...spelled(inchM / 1000, ['mil', 'mils', 'thou']),
  ],
  area: [
    ...spelled(1, ['m2', 'sq m', 'sqm', 'square metre', 'square metres', 'square meter', 'square meters']),
    ...spelled(1e-4, ['cm2', 'sq cm', 'sqcm']),
    ...spelled(1e-6, ['mm2', 'sq mm', 'sqmm', 'mm sq', 'square millimetres', 'square millimeters']),
    ...spelled(inchM ** 2, ['in2', 'sq in', 'square inch', 'square inches']),
    ...spelled(footM ** 2, ['ft2', 'sq ft', 'square foot', 'square feet']),
    ...spelled(circularMilM2, ['cmil', 'cmils', 'CM', 'circular mil', 'circular mils']),
    ...spelled(1000 * circularMilM2, ['kcmil', 'kcmils', 'MCM']),
  ],
  resistance: ohms,
  resistivity: [...perpendicular('m', 1), ...perpendicular('cm', 0.01), ...perpendicular('ft', footM)],
  power: metric(['W'], ['watt', 'watts'], 'umkM'),
  frequency: metric(['Hz'], ['hertz'], 'kMG'),
  voltage: metric(['V'], ['volt', 'volts'], 'umkM'),
  current: metric(['A'], ['amp', 'amps', 'ampere', 'amperes'], 'umk'),
  angle: [...spelled(1, ['deg', 'degree', 'degrees', '°']), ...spelled(180 / Math.PI, ['rad'])],
  inductance: metric(['H'], ['henry', 'henries'], 'num'),
  time: [...metric(['s'], ['second', 'seconds'], 'num'), ...spelled(1, ['sec', 'secs'])],
  temperature: [...spelled(1, ['K', 'kelvin', '°C', 'deg C', 'C']), ...spelled(5 / 9, ['°F', 'deg F', 'F'])],
  celsius: [
    ...spelled(1, ['°C', 'deg C', 'C']),
    ...['°F', 'deg F', 'F'].map((spelling) => ({ spelling, factor: 5 / 9, offset: -160 / 9 })),
    ...['K', 'kelvin'].map((spelling) => ({ spelling, factor: 1, offset: -273.15 })),
  ],
  charge: [...metric(['C'], ['coulomb', 'coulombs'], 'numk'), ...spelled(1, ['As', 'A s'])],
  speed: [
    ...spelled(1, ['m/s']),
    ...spelled(1e6, ['m/us']),
    ...spelled(1 / 3.6, ['km/h']),
    ...spelled((5280 * footM) / 3600, ['mph', 'mi/h']),
    ...spelled(footM, ['ft/s']),
  ],
  action: [
    ...spelled(1, ['J/ohm', 'A2s', 'A2 s']),
    ...spelled(1e3, ['kJ/ohm']),
    ...spelled(1e6, ['MJ/ohm', 'kA2s', 'kA2 s']),
  ],
  energy: metric(['J'], ['joule', 'joules'], 'mkMG'),
  mass: [...metric(['g'], ['gram', 'grams'], 'k', 1e-3), ...spelled(poundKg, ['lb', 'lbs', 'pound', 'pounds'])],
  'current rise': [...spelled(1, ['A/s']), ...spelled(1e6, ['A/us']), ...spelled(1e9, ['kA/us'])],
  field: [...spelled(1, ['V/m']), ...spelled(1e3, ['kV/m']), ...spelled(1e6, ['MV/m'])],
  'resistance per length': [
    ...spelled(1, ['ohm/m']),
    ...spelled(1e-3, ['ohm/km', 'mohm/m']),
    ...spelled(1 / (1000 * footM), ['ohm/1000 ft', 'ohm/kft']),
  ],
  'inductance per length': [...spelled(1, ['H/m']), ...spelled(1e-6, ['uH/m']), ...spelled(1e-9, ['nH/m'])],
  number: [{ spelling: '', factor: 1, offset: 0 }],
};

/** What a person would be told to write. */
export const usualUnits: Readonly<Record<Dimension, readonly string[]>> = {
  length: ['ft', 'in', 'm', 'mm'],
  area: ['mm2', 'kcmil', 'cmil', 'sq in', 'sq ft', 'm2'],
  resistance: ['mohm', 'ohm', 'kohm', 'Mohm'],
  resistivity: ['ohm m'],
  power: ['W', 'kW'],
  frequency: ['kHz', 'MHz', 'GHz'],
  voltage: ['V', 'kV'],
  current: ['A', 'kA'],
  angle: ['deg'],
  inductance: ['nH', 'uH', 'mH'],
  time: ['ns', 'us', 'ms', 's'],
  temperature: ['K'],
  celsius: ['°C', '°F'],
  charge: ['C'],
  speed: ['m/s', 'm/us'],
  action: ['J/ohm', 'kJ/ohm', 'MJ/ohm'],
  energy: ['J', 'kJ'],
  mass: ['kg', 'lb'],
  'current rise': ['kA/us'],
  field: ['kV/m'],
  'resistance per length': ['ohm/km', 'ohm/1000 ft'],
  'inductance per length': ['uH/m'],
  number: [],
};

/**
 * A unit's text in the one form that the table is written in: `Ω·m`, `ohm-m` and `ohm. m` become `ohm m`, `µH` becomes
 * `uH`, `mm²` and `mm^2` become `mm2`. Capitals are kept: `m` and `M` differ.
 */
export function plainUnit(text: string): string {
  return text
    .replaceAll('º', '°')
    .normalize('NFKC')
    .replace(/Ω(?=\p{L})/gu, 'ohm ')
    .replaceAll('Ω', 'ohm')
    .replaceAll('μ', 'u')
    .replaceAll('^', '')
    .replace(/[\s·⋅*.-]+/g, ' ')
    .replace(/ ?\/ ?/g, '/')
    .trim();
}

function spelled(factor: number, spellings: readonly string[]): readonly Unit[] {
  return spellings.map((spelling) => ({ spelling, factor, offset: 0 }));
}

/** Symbols with prefix letters, words with prefix words, both without a prefix. */
function metric(symbols: readonly string[], words: readonly string[], letters: string, base = 1): readonly Unit[] {
  const prefixed = [...letters].flatMap((letter) => {
    const [word, factor] = prefixes[letter]!;
    return spelled(factor * base, [...symbols.map((s) => letter + s), ...words.map((w) => word + w)]);
  });
  return [...spelled(base, [...symbols, ...words]), ...prefixed];
}

/** Resistivity spellings: an ohm spelling, then a length, joined, spaced or with the length in words. */
function perpendicular(length: string, metres: number): readonly Unit[] {
  const names = length === 'm' ? ['m', 'metre', 'metres', 'meter', 'meters'] : [length];
  return ohms.flatMap((ohm) =>
    names.flatMap((name) => spelled(ohm.factor * metres, [`${ohm.spelling} ${name}`, `${ohm.spelling}${name}`])),
  );
}
