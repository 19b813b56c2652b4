import type { Study } from '../../src/study/study.ts';
import type { Bounded, StudyEarthCondition, StudySurface } from '../../src/study/study-earth.ts';
import type { noSoil } from './no-soil.ts';

/** Soil and electrodes of the invented club: figures of the right size that agree with each other, worked out by simple forms. */
type Earth = Study['earth'];

const around = (value: number, low: number, high: number | null): Bounded => ({ value, low, high });

/** Two layers under four evenly spaced pins: the image series found in any text on resistivity surveys (from memory). */
function twoLayersOhmM(spacingM: number, topOhmM: number, lowerOhmM: number, thickM: number): number {
  const k = (lowerOhmM - topOhmM) / (lowerOhmM + topOhmM);
  let sum = 0;
  for (let n = 1; n < 400; n++) {
    const ratio = (2 * n * thickM) / spacingM;
    sum += k ** n * (1 / Math.sqrt(1 + ratio ** 2) - 1 / Math.sqrt(4 + ratio ** 2));
  }
  return topOhmM * (1 + 4 * sum);
}

const fitted = { topOhmM: 168, lowerOhmM: 58, thickM: 1.62 };
const fittedAt = (a: number) => twoLayersOhmM(a, fitted.topOhmM, fitted.lowerOhmM, fitted.thickM);
/** Each reading off the curve by so many per cent. */
const sounding = [
  ['four-pin-1', 0.61, 3.1],
  ['four-pin-1', 1.22, -2.4],
  ['four-pin-1', 2.44, 1.7],
  ['four-pin-1', 4.88, -3.9],
  ['four-pin-1', 9.75, 2.2],
  ['four-pin-2', 1.52, 4.6],
  ['four-pin-2', 3.05, -1.2],
  ['four-pin-2', 6.1, 0.8],
] as const;

const soilFit: Earth['soilFit'] = {
  readings: ['four-pin-1', 'four-pin-2'],
  points: sounding.map(([reading, spacingM, off]) => ({
    reading,
    spacingM,
    measuredOhmM: fittedAt(spacingM) * (1 + off / 100),
    fittedOhmM: fittedAt(spacingM),
  })),
  curve: Array.from({ length: 41 }, (_, i) => 0.5 * 24 ** (i / 40)).map((a) => ({ spacingM: a, ohmM: fittedAt(a) })),
  chosen: 2,
  layers: [
    {
      resistivityOhmM: { value: fitted.topOhmM, low: 149, high: 191, resolved: true },
      thicknessM: { value: fitted.thickM, low: 1.12, high: 2.2, resolved: true },
    },
    { resistivityOhmM: { value: fitted.lowerOhmM, low: 52, high: 64, resolved: true }, thicknessM: null },
  ],
  tradeOffs: [],
  misfitShare: 0.028,
  tried: [
    { layers: 1, misfitShare: 0.41 },
    { layers: 2, misfitShare: 0.028 },
    { layers: 3, misfitShare: 0.027 },
  ],
  text: [
    'Two layers fit the readings; a third one brings nothing that could be told from the scatter.',
    'A thicker top layer of lower resistivity fits nearly as well as a thinner one of higher resistivity.',
  ],
};

const condition = (
  id: string,
  says: string,
  topOhmM: readonly Bounded[],
  factor: number,
  shares: readonly [number, number],
): StudyEarthCondition => ({
  id,
  says,
  layers: [
    ...topOhmM.map((r, i) => ({ resistivityOhmM: r, thicknessM: around([0.91, 0.71][i]!, [0.91, 0.41][i]!, 1.2) })),
    { resistivityOhmM: around(58, 52, 64), thicknessM: null },
  ],
  resistanceOhm: around(19 * factor, 14 * factor, null),
  groups: [
    { id: 'E-service', resistanceOhm: around(19 * factor, 14 * factor, null) },
    { id: 'E-shack', resistanceOhm: around(48 * factor ** 1.6, 24 * factor, 95 * factor ** 2) },
    { id: 'ring', resistanceOhm: around(10.5 * factor ** 1.3, 5 * factor, 22 * factor ** 1.5) },
  ],
  electrodes: [
    { id: 'E-service', aloneOhm: around(48 * factor ** 1.6, 24 * factor, 95 * factor ** 2), currentShare: shares[0] },
    { id: 'E-shack', aloneOhm: around(48 * factor ** 1.6, 24 * factor, 95 * factor ** 2), currentShare: null },
    { id: 'ring', aloneOhm: around(14 * factor ** 1.4, 7 * factor, 28 * factor ** 1.6), currentShare: null },
    { id: 'tower-footing', aloneOhm: null, currentShare: null },
    { id: 'tower-rods', aloneOhm: around(20 * factor ** 1.3, 10 * factor, 41 * factor ** 1.5), currentShare: null },
    { id: 'water-pipe', aloneOhm: around(13, 12, 14), currentShare: shares[1] },
  ],
});

const top = around(168, 149, 191);
const conditions: Earth['conditions'] = [
  condition('as typed', 'soil as typed', [top, top], 1, [0.36, 0.64]),
  condition('dry', 'after a long drought, dry down to 3 ft (0.91 m)', [around(520, 300, 900), top], 1.4, [0.28, 0.72]),
  condition('frozen', 'frozen down to 3 ft (0.91 m), wet below it', [around(3400, 900, 8000), top], 2.1, [0.17, 0.83]),
];

/** A rod in soil that is the mean of what it stands in, by the common formula for a rod (Dwight 1936, from memory). */
function rodOhm(lengthM: number, topOhmM: number): number {
  const inTop = Math.min(lengthM, fitted.thickM);
  const meanOhmM = lengthM / (inTop / topOhmM + (lengthM - inTop) / fitted.lowerOhmM);
  return (meanOhmM / (2 * Math.PI * lengthM)) * (Math.log((4 * lengthM) / 0.0079) - 1);
}

const lengthsM = [1.22, 1.83, 2.44, 3.05, 3.66, 4.88, 6.1, 7.32, 9.14];
const depthCurve = (electrode: string, id: string, topOhmM: Bounded): Earth['depthCurves'][number] => ({
  electrode,
  condition: id,
  lengthM: 2.44,
  points: lengthsM.map((lengthM) => ({
    lengthM,
    ohm: around(
      rodOhm(lengthM, topOhmM.value!),
      rodOhm(lengthM, topOhmM.low) * 0.8,
      rodOhm(lengthM, topOhmM.high!) * 1.3,
    ),
  })),
});

const spacings = [0.61, 1.22, 1.83, 2.44, 3.66, 4.88, 7.32, 9.75, 14.6];
/** Half, less what the one feels of the other at a distance: 1 / (2 π s) over the rod's own resistance. */
const gain = (electrode: string, share: number): Earth['spacingGains'][number] => ({
  electrode,
  points: spacings.map((spacingM) => {
    const gainShare = 0.5 * (1 - share / (share + spacingM));
    return { spacingM, ohm: 48 * (1 - gainShare), gainShare };
  }),
});

type Place = readonly [number, number];

/** Potential of buried points, each letting out the same current, at a point of the surface; made 1 at the metal. */
function surfaceShare([east, north]: Place, points: readonly Place[], depthM: number, metalM: number): number {
  const at = (nearestM: number) => (p: Place) => 1 / Math.max(nearestM, Math.hypot(east - p[0], north - p[1], depthM));
  const sum = points.map(at(metalM)).reduce((a, b) => a + b, 0);
  return Math.min(0.97, sum / points.length / metalPotential(points, metalM));
}

function metalPotential(points: readonly Place[], metalM: number): number {
  const [first] = points;
  const sum = points.map((p) => 1 / Math.max(metalM, Math.hypot(p[0] - first![0], p[1] - first![1])));
  return sum.reduce((a, b) => a + b, 0) / points.length;
}

function surface(
  group: string,
  points: readonly Place[],
  [depthM, metalM]: readonly [number, number],
  [westM, southM]: Place,
  [fromM, toM]: readonly [Place, Place],
): StudySurface {
  const share = (p: Place) => surfaceShare(p, points, depthM, metalM);
  const grid = { westM, southM, stepM: 0.75, columns: 40, rows: 30 };
  const cells = Array.from({ length: grid.rows * grid.columns }, (_, i) =>
    share([westM + (i % grid.columns) * grid.stepM, southM + Math.floor(i / grid.columns) * grid.stepM]),
  );
  const lengthM = Math.hypot(toM[0] - fromM[0], toM[1] - fromM[1]);
  const along = (d: number): Place => [
    fromM[0] + ((toM[0] - fromM[0]) * d) / lengthM,
    fromM[1] + ((toM[1] - fromM[1]) * d) / lengthM,
  ];
  const distances = Array.from({ length: 61 }, (_, i) => (lengthM * i) / 60);
  const steps = distances
    .filter((d) => d + 1 <= lengthM)
    .map((atM) => ({ atM, share: Math.abs(share(along(atM)) - share(along(atM + 1))) }));
  const step = steps.reduce((worst, s) => (s.share > worst.share ? s : worst));
  return {
    group,
    condition: 'as typed',
    grid: { ...grid, share: cells },
    line: { fromM, toM, points: distances.map((distanceM) => ({ distanceM, share: share(along(distanceM)) })) },
    step,
    touch: group === 'ring' ? { share: 0.31, part: 'tower' } : null,
  };
}

const ring: readonly Place[] = Array.from({ length: 48 }, (_, i) => {
  const [side, along] = [Math.floor(i / 12), (i % 12) / 2];
  return (
    [
      [20.5 + along, 10.2],
      [26.5, 10.2 + along],
      [26.5 - along, 16.2],
      [20.5, 16.2 - along],
    ] as const
  )[side]!;
});

export const clubSoil: Pick<Earth, keyof typeof noSoil> = {
  conditions,
  soilFit,
  soilOfElectrodes: [
    {
      electrode: 'water-pipe',
      measuredOhm: around(13, 12, 14),
      uniformOhmM: around(78, 72, 84),
      text: 'water-pipe was read as 12 to 14 ohm: in soil alike all through that would be 72 to 84 ohm m.',
    },
  ],
  readingTraps: [],
  contradictions: [
    {
      at: ['E-shack'],
      text: 'No uniform soil fits 750 ohm at 10 ft (3.05 m) and 5 ohm at 55 ft (16.8 m); two layers do with a boundary anywhere from 15 to 50 ft (4.6 to 15 m) (lower layer 50 to 9 ohm m).',
    },
  ],
  transferred: [
    { electrode: 'E-service', group: 'ring', share: around(0.06, 0.04, 0.09) },
    { electrode: 'E-shack', group: 'E-service', share: around(0.05, 0.03, 0.07) },
    { electrode: 'E-shack', group: 'ring', share: around(0.13, 0.09, 0.19) },
  ],
  depthCurves: [
    depthCurve('E-service', 'as typed', top),
    depthCurve('E-service', 'dry', around(420, 280, 600)),
    depthCurve('E-service', 'frozen', around(2400, 700, 5000)),
    depthCurve('E-shack', 'as typed', top),
  ],
  spacingGains: [gain('E-service', 0.62), gain('tower-rods', 1.4)],
  // n rods 4.88 m apart that give off alike in 100 ohm m: (48 + 3.26 (2/n) sum of (n - k) / k) / n, by hand
  rodLines: [{ electrode: 'E-service', spacingM: 4.88, ohm: [48, 25.6, 17.8, 13.8, 11.3, 9.6] }],
  surfaces: [
    surface(
      'E-service',
      [[0, -0.3]],
      [0, 0.24],
      [-15, -11],
      [
        [0, -0.3],
        [-10, -8],
      ],
    ),
    surface(
      'ring',
      ring,
      [0.7, 0.24],
      [9, 2],
      [
        [26.5, 13.2],
        [36.5, 13.2],
      ],
    ),
  ],
  solve: {
    segments: 148,
    errorShare: 0.0031,
    worstAt: 'tower-rods',
    leaking: ['c3', 'c8'],
    limits: [
      'thick-one is bare and in the soil without a known place: in for the lowest figure, out for the others.',
      'What stands in the soil under tower may carry current too: in for the lowest figure, out for the others.',
    ],
  },
};
