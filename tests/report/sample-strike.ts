import type { Study } from '../../src/study/study.ts';
import type {
  StudyStrike,
  StudyStrikeConductor,
  StudyStrikeDifference,
  StudyStroke,
} from '../../src/study/study-strike.ts';
import { clubMeaning, nothingBeside } from './sample-strike-meaning.ts';

type Why = StudyStrikeDifference['why'];

const peakA = 30e3;
const steepestAPerS = 24.3e9;

/** A stroke by hand: 30 kA in 1/200, the figures of the trade round it. */
export const sampleStroke: StudyStroke = {
  name: 'first negative, median',
  wave: '1/200',
  peakA,
  frontS: 1e-6,
  halfValueS: 200e-6,
  steepestAPerS,
  chargeC: 8.7,
  actionA2s: 131e3,
  source: { document: 'lightning parameters of a committee', edition: '2013', provenance: 'memory' },
};

/** A difference with a range of 20 % either way. */
export function difference(
  [a, b]: readonly [string, string],
  why: Why,
  kilovolt: number,
  rest: Partial<StudyStrikeDifference> = {},
): StudyStrikeDifference {
  const peakV = kilovolt * 1e3;
  return {
    a,
    b,
    route: 'straight',
    why,
    by: null,
    peakV,
    rangeV: { value: peakV, low: 0.8 * peakV, high: 1.2 * peakV },
    atS: 0.9e-6,
    voltPerKiloampere: peakV / (peakA / 1e3),
    voltPerKiloamperePerMicrosecond: peakV / (steepestAPerS / 1e9),
    isBracketed: false,
    isBeyond: false,
    ...rest,
  };
}

/** A conductor of which only the current is known. */
export function carrier(
  id: string,
  kiloampere: number,
  rest: Partial<StudyStrikeConductor> = {},
): StudyStrikeConductor {
  const share = (kiloampere * 1e3) / peakA;
  return {
    id,
    peakA: kiloampere * 1e3,
    atS: 1.8e-6,
    shareOfPeak: share,
    actionA2s: sampleStroke.actionA2s * share * share,
    sectionFrom: null,
    sectionM2: null,
    riseK: null,
    melts: null,
    levels: [],
    ...rest,
  };
}

const names = ['I', 'II', 'III', 'IV'] as const;

/** Heat of a wire: by this stroke, then at each level; null at a level: it melts. */
function heat(riseK: number | null, levels: readonly (number | null)[]): Partial<StudyStrikeConductor> {
  return {
    sectionFrom: 'typed',
    sectionM2: 13.3e-6,
    riseK,
    melts: riseK === null,
    levels: levels.map((k, i) => ({ level: names[i]!, riseK: k, melts: k === null })),
  };
}

/** Of 1/200 and its steepness, mixed as a height in the network has them: invented curves of the right shape. */
const timesS = Array.from({ length: 120 }, (_, i) => (i === 0 ? 0 : 1e-8 * 10 ** (((i - 1) / 118) * 4.7)));
function curve(ohm: number, microhenry: number): readonly number[] {
  const [slow, fast] = [285e-6, 0.4e-6];
  return timesS.map((t) => {
    const current = peakA * 1.01 * (Math.exp(-t / slow) - Math.exp(-t / fast));
    const rise = peakA * 1.01 * (Math.exp(-t / fast) / fast - Math.exp(-t / slow) / slow) * Math.min(1, t / 2e-7);
    return ohm * current + microhenry * 1e-6 * rise;
  });
}

const differences: StudyStrike['differences'] = [
  difference(['hf-radio', 'main-panel'], 'service', 96.4, { by: 'outlet', atS: 1.1e-6 }),
  difference(['tower', 'entry'], 'base', 212, { by: 'line1', atS: 0.6e-6 }),
  difference(['vhf-radio', 'jpole'], 'line', 48.2, { by: 'line3', isBeyond: true }),
  difference(['vhf-radio', 'main-panel'], 'service', 91.7, { atS: 1.1e-6 }),
  difference(['hf-radio', 'vhf-radio'], 'reach', 0.84, { atS: 0.4e-6 }),
  difference(['hf-radio', 'computer'], 'reach', 12.6, { route: null, rangeV: { value: 12600, low: 0, high: null } }),
  difference(['hf-radio', 'rotator-box'], 'reach', 31.5, { by: 'rotor', atS: 0.7e-6 }),
  difference(['tuner', 'main-panel'], 'service', 94.1, { atS: 1.1e-6 }),
  difference(['hf-radio', 'tuner'], 'line', 2.31, { by: 'line2', atS: 0.4e-6 }),
  difference(['modem', 'computer'], 'line', 6.2, { by: 'network' }),
  difference(['main-panel', 'sub-panel'], 'asked', 3.4, { by: 'feeder-bond' }),
  difference(['modem', 'remote earth'], 'outside', 38.8, { by: 'phone', route: null, isBeyond: true }),
  difference(['main-panel', 'remote earth'], 'outside', 143, { by: 'mains', route: null, atS: 2.2e-6 }),
];

/** What an invented strike did at the club: what a page has to show, not what a calculation gave. */
export const clubStrike: StudyStrike = {
  ...clubMeaning,
  at: 'tower@top',
  stroke: sampleStroke,
  refused: null,
  peakV: { tower: 912e3, entry: 698e3, 'hf-radio': 702e3, 'main-panel': 143e3 },
  differences,
  conductors: [
    carrier('tower', 29.1),
    carrier('c1', 2.2, heat(0.9, [71, 38, 16, 16])),
    carrier('c2', 1.6),
    carrier('c3', 3.9, heat(1.7, [null, 129, 48, 48])),
    carrier('c4', 4.4, heat(0.16, [13, 7.1, 3.1, 3.1])),
    carrier('c5', 1.9, heat(4.4, [null, null, 210, 210])),
    carrier('c6', 0.4, heat(0.02, [1.2, 0.7, 0.3, 0.3])),
    carrier('c7', 0.13),
    carrier('c8', 12.4, heat(6.6, [601, 279, 110, 110])),
    carrier('feeder-bond', 3.3, heat(3.1, [412, 190, 77, 77])),
    carrier('line1', 3.7, heat(28, [null, null, null, null])),
    carrier('line2', 3.5),
    carrier('line4', 0.06),
    carrier('outlet', 3.2, heat(8.2, [null, null, 391, 391])),
    carrier('rotor', 0.9, heat(null, [null, null, null, null])),
  ],
  joints: [
    { id: 'c1:main-panel', peakA: 2200, peakV: 1.1, energyJ: 0.4 },
    { id: 'c3:entry', peakA: 3900, peakV: null, energyJ: null },
    { id: 'clamp1', peakA: 2200, peakV: 2.2, energyJ: 0.9 },
    { id: 'clamp2', peakA: 3900, peakV: 74, energyJ: 38 },
    { id: 'weld1', peakA: 6100, peakV: 0.6, energyJ: 0.5 },
  ],
  electrodes: [
    { id: 'E-service', peakA: 2200, shareOfPeak: 2200 / peakA },
    { id: 'E-shack', peakA: 3900, shareOfPeak: 3900 / peakA },
    { id: 'ring', peakA: 12100, shareOfPeak: 12100 / peakA },
    { id: 'tower-rods', peakA: 9800, shareOfPeak: 9800 / peakA },
    { id: 'water-pipe', peakA: 1600, shareOfPeak: 1600 / peakA },
  ],
  fired: [
    {
      arrester: 'a1',
      atS: 0.12e-6,
      line: 'line1',
      levelV: 712,
      afterV: 43,
      peakA: 899,
      chargeC: 0.172,
      energyJ: 6.34,
      passes: { at: 'hf-radio', openV: 1350, beforeV: 714, afterV: 49 },
    },
    { arrester: 'mains-spd', atS: 0.4e-6 },
  ],
  cores: [
    { line: 'line1', at: 'hf-radio', peakV: 640 },
    { line: 'line3', at: 'vhf-radio', peakV: 5200 },
  ],
  failures: [
    { lost: 'c1', alike: [], separates: ['E-service'], worst: null },
    { lost: 'c3', alike: [], separates: [], worst: { a: 'tower', b: 'entry', beforeV: 212e3, afterV: 220e3 } },
    { lost: 'c5', alike: [], separates: [], worst: { a: 'hf-radio', b: 'vhf-radio', beforeV: 840, afterV: 19.2e3 } },
    { lost: 'c7', alike: [], separates: [], worst: null },
    { lost: 'clamp2', alike: [], separates: [], worst: { a: 'tower', b: 'entry', beforeV: 212e3, afterV: 220e3 } },
    { lost: 'line3', alike: [], separates: ['jpole', 'mast-east'], worst: null },
    {
      lost: 'outlet',
      alike: [],
      separates: [],
      worst: { a: 'hf-radio', b: 'main-panel', beforeV: 96.4e3, afterV: 655e3 },
    },
    { lost: 'weld1', alike: [], separates: [], worst: null },
  ],
  traces: {
    timesS,
    potentialsV: [
      { part: 'tower', volt: curve(24, 3) },
      { part: 'entry', volt: curve(22, 1.6) },
      { part: 'hf-radio', volt: curve(22, 1.7) },
      { part: 'main-panel', volt: curve(4.7, 0.1) },
      { part: 'modem', volt: curve(1.1, 0.4) },
    ],
  },
  assumptions: [
    'Nothing is typed of the channel: it stands upright over the struck point.',
    'line1 and line2 run at the face of tower, two cable diameters apart.',
    'The jacket of phone is taken as insulating.',
  ],
  solve: {
    branches: 84,
    loops: 11,
    steps: 2140,
    errorShare: 2.1e-4,
    energyShare: 3.4e-5,
    longestWayM: 41.2,
    mostWayM: 30,
  },
};

const nothing = {
  peakV: {},
  differences: [],
  conductors: [],
  joints: [],
  electrodes: [],
  fired: [],
  cores: [],
  failures: [],
  ...nothingBeside,
  traces: { timesS: [], potentialsV: [] },
  assumptions: [],
  solve: null,
};

/** One that could not be worked out. */
export const refusedStrike: StudyStrike = {
  ...nothing,
  at: 'loop',
  stroke: null,
  refused: 'loop hangs on nothing that reaches an electrode, so its potential is not defined.',
};

/** One of a site without places: every difference is an upper estimate. */
export const houseStrike: StudyStrike = {
  ...nothing,
  at: 'mast@top',
  stroke: { ...sampleStroke, name: 'first positive, level III', wave: '10/350', peakA: 100e3, frontS: 10e-6 },
  refused: null,
  differences: [
    difference(['radio', 'board'], 'service', 412, { route: null, by: 'socket' }),
    difference(['board', 'remote earth'], 'outside', 61, { route: null }),
  ],
  conductors: [carrier('w1', 18), carrier('feed-1', 9.1)],
  electrodes: [{ id: 'rod-mast', peakA: 71e3, shareOfPeak: 0.71 }],
  assumptions: ['No places are typed: what lies beside what is not known.'],
  solve: {
    branches: 9,
    loops: 1,
    steps: 610,
    errorShare: 8e-4,
    energyShare: 2e-4,
    longestWayM: 22,
    mostWayM: 300,
  },
};

/** The study with these strikes in it. */
export function struck(study: Study, ...strikes: readonly StudyStrike[]): Study {
  return { ...study, strikes } as Study;
}
