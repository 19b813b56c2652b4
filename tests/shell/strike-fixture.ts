import { readSiteBytes } from '../../src/site/read-site-bytes.ts';
import type { Site } from '../../src/site/site.ts';
import type { StudyStrike, StudyStrikeConductor, StudyStrikeDifference } from '../../src/study/study-strike.ts';

/** An invented station: tower, entry bar, radio on a cord, one bond between bar and service. */
export const larchRise = `site: {name: Larch Rise, region: us, units: ft, service: main-panel}
soil: {type: clay}
electrodes:
  R1: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-bonded steel, at: [0 ft, 0 ft]}
  R2: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-bonded steel, at: [30 ft, 0 ft]}
supports:
  tower: {kind: lattice tower, height: 60 ft, metal: galvanised steel, sections: one piece, at: [0 ft, 3 ft]}
antennas:
  beam: {kind: yagi, on: tower@top, touches_support: yes, dc_path: yes}
bars:
  entry: {kind: entry panel}
arresters:
  a1: {kind: gas tube, on: entry, joint: bolted lug}
  a2: {kind: gas tube, on: entry, joint: bolted lug}
equipment:
  main-panel: {kind: service panel, where: inside}
  radio: {kind: transceiver, where: inside}
lines:
  feed: {kind: coax, path: [beam, a1, radio]}
conductors:
  c1: {from: tower@base, to: R1, wire: 2 AWG copper, length: 4 ft}
  c2: {from: entry, to: R1, wire: 6 AWG copper, length: 30 ft}
  c3: {from: entry, to: main-panel, wire: 6 AWG copper, length: 40 ft, joints: none}
  c4: {from: main-panel, to: R2, wire: 6 AWG copper, length: 10 ft, joints: none}
`;

export function larchRiseSite(): Site {
  const { site, problems } = readSiteBytes(new TextEncoder().encode(larchRise), 'larch-rise.site.yaml');
  if (site === null) throw new Error(JSON.stringify(problems));
  return site;
}

/** Made by hand, not worked out: a page is tested with it, no physics. */
export const handMadeStrike: StudyStrike = {
  at: 'tower@top',
  stroke: {
    name: 'first negative stroke, median of all',
    wave: '1/200',
    peakA: 30e3,
    frontS: 1e-6,
    halfValueS: 200e-6,
    steepestAPerS: 48.4e9,
    chargeC: 8.62,
    actionA2s: 131e3,
    source: { document: 'IEC 62305-1', edition: '2010', provenance: 'memory' },
  },
  refused: null,
  peakV: { 'tower@top': 1.62e6, 'main-panel': 321e3 },
  differences: [
    difference('entry', 'main-panel', { why: 'service', peakV: 68_300, low: 51_200, high: 90_400 }),
    difference('radio', 'main-panel', { why: 'line', by: 'cord', peakV: 24_600, low: 24_500, high: 24_800 }),
    difference('tower@base', 'entry', { why: 'base', peakV: 141_000, low: 122_000, high: 166_000, isBeyond: true }),
    difference('radio', 'entry', { why: 'reach', peakV: 850, low: 700, high: 1000, route: null }),
    difference('main-panel', 'remote earth', {
      why: 'outside',
      by: 'mains',
      peakV: 412_000,
      low: 260_000,
      high: null,
      route: null,
    }),
    difference('tower@45 ft', 'radio', { why: 'asked', peakV: 3_400, low: 3_300, high: 3_500 }),
  ],
  conductors: [
    conductor('tower', 30e3, { riseK: null }),
    conductor('c1', 18_400, { riseK: 3.1, meltsAt: ['I'] }),
    conductor('c2', 11_600, { riseK: 12.4 }),
    conductor('c3', 7_900, { riseK: null, melts: true }),
    conductor('feed', 1_240, { riseK: null }),
    conductor('c4', 110, { riseK: 0.1 }),
  ],
  joints: [
    { id: 'c1:R1', peakA: 18_400, peakV: 9.2, energyJ: 24.3 },
    { id: 'c2:entry', peakA: 11_600, peakV: null, energyJ: null },
  ],
  electrodes: [
    { id: 'R1', peakA: 21_100, shareOfPeak: 0.703 },
    { id: 'R2', peakA: 9_300, shareOfPeak: 0.31 },
  ],
  fired: [{ arrester: 'a1', atS: 0.31e-6 }],
  cores: [{ line: 'feed', at: 'radio', peakV: 4_230 }],
  failures: [
    {
      lost: 'c1',
      alike: [],
      separates: [],
      worst: { a: 'tower@base', b: 'entry', beforeV: 141_000, afterV: 290_000 },
    },
    { lost: 'c3', alike: [], separates: [], worst: { a: 'radio', b: 'main-panel', beforeV: 24_600, afterV: 515_000 } },
    { lost: 'c4', alike: [], separates: ['R2'], worst: null },
    { lost: 'feed', alike: [], separates: [], worst: { a: 'radio', b: 'entry', beforeV: 850, afterV: 860 } },
  ],
  forces: [],
  sideFlashes: [],
  margins: [],
  earths: [],
  how: 'struck',
  ionisationVPerM: null,
  ionised: [],
  traces: { timesS: [], potentialsV: [] },
  assumptions: ['Length of c9 taken as 20 ft (6.1 m): neither length nor place is known.'],
  solve: {
    branches: 24,
    loops: 5,
    steps: 812,
    errorShare: 0.0004,
    energyShare: 0.00002,
    longestWayM: 42.3,
    mostWayM: 30,
  },
};

type Given = Partial<StudyStrikeDifference> &
  Pick<StudyStrikeDifference, 'why' | 'peakV'> & { readonly low: number; readonly high: number | null };

/** 30 kA and 48.4 kA/us were put in. */
function difference(a: string, b: string, { low, high, ...given }: Given): StudyStrikeDifference {
  return {
    a,
    b,
    route: 'straight',
    by: null,
    rangeV: { value: given.peakV, low, high },
    atS: 1.4e-6,
    voltPerKiloampere: given.peakV / 30,
    voltPerKiloamperePerMicrosecond: given.peakV / 48.4,
    isBracketed: false,
    isBeyond: false,
    ...given,
  };
}

function conductor(
  id: string,
  peakA: number,
  given: { readonly riseK: number | null; readonly melts?: boolean; readonly meltsAt?: readonly string[] },
): StudyStrikeConductor {
  const isKnown = given.riseK !== null || given.melts === true;
  const levels = (['I', 'II', 'III', 'IV'] as const).map((level) => {
    const melts = given.melts === true || (given.meltsAt ?? []).includes(level);
    return { level, riseK: melts ? null : 40, melts };
  });
  return {
    id,
    peakA,
    atS: 1.5e-6,
    shareOfPeak: peakA / 30e3,
    actionA2s: (peakA / 30e3) ** 2 * 131e3,
    sectionFrom: isKnown ? 'typed' : null,
    sectionM2: isKnown ? 13.3e-6 : null,
    riseK: given.riseK,
    melts: given.melts ?? (isKnown ? false : null),
    levels: isKnown ? levels : [],
  };
}
