import type { Study, StudyPath } from '../../src/study/study.ts';
import { clubBonding } from './sample-bonding.ts';
import { clubConditions, clubFindings, memory, ours } from './sample-findings.ts';
import { clubBuildings, clubParts } from './sample-parts.ts';
import { clubSoil } from './sample-soil.ts';

const m = (low: number, high = low) => ({ low, high });

function way(from: string, to: string, aim: StudyPath['aim'], rest: Partial<StudyPath>): StudyPath {
  return {
    from,
    to,
    aim,
    lengthM: null,
    lengthAtLeastM: 0,
    resistanceOhm: null,
    inductanceH: null,
    bendsDeg: 0,
    through: [from, to],
    pieces: [],
    weakest: null,
    separatePaths: 1,
    separatePathsStrict: 1,
    byFeeder: false,
    ...rest,
  };
}

const paths: Study['paths'] = [
  way('beam', 'ring', 'electrode', {
    lengthM: m(15.3),
    resistanceOhm: m(0.0004, 0.01),
    inductanceH: m(14e-6),
    through: ['beam', 'tower', 'ring'],
    separatePaths: 2,
  }),
  way('entry', 'E-shack', 'electrode', {
    lengthM: m(1.2),
    resistanceOhm: m(0.001, 0.02),
    inductanceH: m(1.3e-6),
    bendsDeg: 90,
    through: ['entry', 'c3', 'clamp2', 'E-shack'],
    weakest: { part: 'c3', areaM2: m(13.3e-6) },
  }),
  way('hf-radio', 'E-shack', 'electrode', {
    lengthAtLeastM: 2.1,
    through: ['hf-radio', 'c5', 'station-bar', 'c4', 'entry', 'c3', 'clamp2', 'E-shack'],
    weakest: { part: 'c5', areaM2: m(5.26e-6) },
  }),
  way('sub-panel', 'main-panel', 'service', {
    lengthM: m(14, 16),
    byFeeder: true,
    through: ['sub-panel', 'feeder-bond', 'main-panel'],
  }),
];

type LineRow = Study['lines'][number];
const shield = {
  which: 'shield',
  count: 1,
  bondedAt: ['tower', 'entry'],
  protectedBy: [],
  drainedBy: [],
  unprotected: null,
} as const;
const core = {
  which: 'core',
  count: 1,
  bondedAt: [],
  protectedBy: ['a1'],
  drainedBy: ['beam'],
  unprotected: 0,
} as const;
const coax = (id: string, stops: readonly string[], protectedBy: readonly string[]): LineRow => ({
  id,
  kind: 'coax',
  stops,
  conductors: [
    shield,
    {
      ...core,
      protectedBy,
      drainedBy: protectedBy.length === 0 ? [] : ['beam'],
      unprotected: protectedBy.length === 0 ? 1 : 0,
    },
  ],
  crossings: [
    {
      building: 'clubhouse',
      after: stops.at(-2)!,
      before: stops.at(-1)!,
      which: 'core',
      count: 1,
      protector: protectedBy[0] ?? null,
      bondedTo: protectedBy.length === 0 ? null : 'entry',
      certain: id !== 'line4',
    },
  ],
});

const lines: Study['lines'] = [
  coax('line1', ['beam', 'bond tower@48 ft', 'bond tower@2 ft', 'a1', 'hf-radio'], ['a1']),
  coax('line2', ['dipole', 'a2', 'tuner', 'hf-radio'], ['a2']),
  coax('line3', ['jpole', 'a3', 'vhf-radio'], ['a3']),
  coax('line4', ['gps', 'bend attic', 'plug j4', 'hf-radio'], []),
  {
    id: 'network',
    kind: 'network',
    stops: ['modem', 'computer'],
    conductors: [{ which: 'core', count: 8, bondedAt: [], protectedBy: [], drainedBy: [], unprotected: 8 }],
    crossings: [],
  },
  {
    id: 'outlet',
    kind: 'mains',
    stops: ['sub-panel', 'hf-radio'],
    conductors: [
      {
        which: 'protective',
        count: 1,
        bondedAt: ['sub-panel', 'hf-radio'],
        protectedBy: [],
        drainedBy: [],
        unprotected: null,
      },
    ],
    crossings: [],
  },
  {
    id: 'phone',
    kind: 'telephone',
    stops: ['street', 'phone-block', 'modem'],
    conductors: [
      { which: 'core', count: 2, bondedAt: [], protectedBy: ['phone-block'], drainedBy: [], unprotected: 0 },
    ],
    crossings: [],
  },
  {
    id: 'rotor',
    kind: 'control',
    stops: ['tower@50 ft', 'rotator-box'],
    conductors: [
      { which: 'core', count: 8, bondedAt: [], protectedBy: ['rotor-protector'], drainedBy: [], unprotected: 2 },
    ],
    crossings: [],
  },
];

type ConductorRow = Study['conductors'][number];
const conductor = (
  id: string,
  role: string,
  from: string,
  to: string,
  rest: Partial<ConductorRow> = {},
): ConductorRow => ({
  id,
  role,
  from,
  to,
  wire: '6 AWG copper',
  areaM2: m(13.3e-6),
  lengthM: m(1.5),
  resistanceOhm: m(0.00197),
  inductanceH: m(1.9e-6),
  buried: 'no',
  bendsDeg: 0,
  ...rest,
});

const conductors: Study['conductors'] = [
  conductor('c1', 'service electrode wire', 'main-panel', 'clamp1', { bendsDeg: 180 }),
  conductor('c2', 'service electrode wire', 'main-panel', 'water-pipe', {
    wire: null,
    areaM2: null,
    buried: 'unknown',
  }),
  conductor('c3', 'bond', 'entry', 'clamp2', { buried: 'yes', bendsDeg: 90 }),
  conductor('c4', 'bond', 'entry', 'station-bar', { wire: 'strap 3 in x 0.022 in copper', areaM2: m(42.6e-6) }),
  conductor('c5', 'bond', 'station-bar', 'hf-radio', { lengthM: null, resistanceOhm: null, inductanceH: null }),
  conductor('c6', 'bond', 'station-bar', 'vhf-radio', { lengthM: m(0.5, 1) }),
  conductor('c7', 'bond', 'station-bar', 'tuner'),
  conductor('c8', 'mast lead', 'tower@base', 'tower-rods.1', {
    wire: '4 AWG copper',
    areaM2: m(21.2e-6),
    buried: 'yes',
  }),
  conductor('c9', 'bond', 'main-panel', 'isb'),
  conductor('feeder-bond', 'protective', 'main-panel', 'sub-panel', { lengthM: m(14, 16) }),
  conductor('thick-one', 'unknown', 'E-service', 'unknown', {
    wire: null,
    areaM2: null,
    lengthM: null,
    resistanceOhm: null,
    inductanceH: null,
    buried: 'unknown',
  }),
];

type JointRow = Study['joints'][number];
const joint = (
  id: string,
  kind: string | null,
  holds: readonly string[],
  on: string | null,
  rest: Partial<JointRow> = {},
): JointRow => ({
  id,
  kind,
  holds,
  on,
  resistanceOhm: m(1e-5, 1e-3),
  listed: 'unknown',
  forBurial: 'unknown',
  buried: 'no',
  accessible: 'yes',
  condition: 'sound',
  ...rest,
});

const joints: Study['joints'] = [
  joint('c1:main-panel', 'bolted lug', ['c1'], 'main-panel', { accessible: 'no' }),
  joint('c3:entry', null, ['c3'], 'entry', { resistanceOhm: null }),
  joint('clamp1', 'acorn clamp', ['c1'], 'E-service', { buried: 'yes' }),
  joint('clamp2', 'hose clamp', ['c3'], 'E-shack', {
    buried: 'yes',
    condition: 'corroded',
    listed: 'no',
    forBurial: 'no',
    resistanceOhm: { low: 1e-4, high: Infinity },
  }),
  joint('weld1', 'exothermic weld', ['ring'], 'ring', { buried: 'yes', listed: 'yes', forBurial: 'yes' }),
];

const arrester = (
  id: string,
  kind: string,
  on: string | null,
  served: readonly string[],
  rest: Partial<Study['arresters'][number]> = {},
) => ({
  id,
  kind,
  on,
  lines: served,
  where: 'outside',
  leadM: null,
  listed: 'unknown',
  sparkoverV: null,
  bonded: 'yes',
  ...rest,
});

const arresters: Study['arresters'] = [
  arrester('a1', 'gas tube', 'entry', ['line1'], { sparkoverV: m(180, 280), leadM: m(0) }),
  arrester('a2', 'gas tube', 'entry', ['line2'], { sparkoverV: m(180, 280), leadM: m(0) }),
  arrester('a3', 'quarter-wave stub', 'entry', ['line3']),
  arrester('mains-spd', 'mains protector', 'main-panel', [], { where: 'clubhouse', leadM: m(0.45) }),
  arrester('phone-block', 'telephone protector', null, ['phone'], { bonded: 'unknown' }),
  arrester('rotor-protector', 'control protector', 'tower-bar', ['rotor']),
];

const resistance = (low: number, high: number) => ({ value: Math.sqrt(low * high), low, high });
const rodFormula = {
  formula: 'R = ρ / (2 π L) · (ln(4 L / a) − 1)',
  source: memory('IEEE Std 142', '2007', 'table 4-5'),
};
const electrode = (id: string, group: string, low: number, high: number, currentShare: number | null) => ({
  id,
  group,
  currentShare,
  inGroupOhm: null,
  aloneOhm: resistance(low, high),
  how: 'computed' as const,
  ...rodFormula,
});

const earth: Study['earth'] = {
  ...clubSoil,
  resistanceOhm: { value: null, low: 14, high: null },
  withServicesOhm: null,
  electrodes: [
    electrode('E-service', 'E-service', 24, 95, 0.36),
    electrode('E-shack', 'E-shack', 24, 95, null),
    electrode('ring', 'ring', 7, 28, null),
    {
      id: 'tower-footing',
      group: 'tower-footing',
      currentShare: null,
      inGroupOhm: null,
      aloneOhm: null,
      how: 'unknown',
      formula: null,
      source: null,
    },
    electrode('tower-rods', 'ring', 10, 41, null),
    {
      id: 'water-pipe',
      group: 'E-service',
      currentShare: 0.64,
      inGroupOhm: null,
      aloneOhm: resistance(12, 14),
      how: 'stated',
      formula: null,
      source: null,
    },
  ],
  groups: [
    { id: 'E-service', resistanceOhm: { value: null, low: 14, high: null } },
    { id: 'E-shack', resistanceOhm: resistance(24, 95) },
    { id: 'ring', resistanceOhm: resistance(5, 22) },
  ],
  soil: {
    type: null,
    known: 'assumed',
    layers: [
      { resistivityOhmM: m(60, 250), thicknessM: m(1.52) },
      { resistivityOhmM: m(60), thicknessM: null },
    ],
  },
  parts: [],
  couplingLeftOut: [['E-service', 'water-pipe']],
  residual: 3.1e-15,
  worstAt: 'main-panel',
};

/** An invented club site, hand-written: what a page has to show, not what a calculation gave. */
export const clubStudy: Study = {
  format: 1,
  tool: { name: 'evenground', version: '0.1.0' },
  site: {
    name: 'Quarry Lane club station',
    region: 'us',
    units: 'ft',
    file: 'quarry-lane.site.yaml',
    checksum: 'b5d4045c3f466fa91fe2cc6abe79232a1a57cdf104f7a26e716e0a1e2789df78',
    service: 'main-panel',
    supply: 'us-grounded',
    address: '12 Quarry Lane, Example Falls',
    owner: 'Quarry Lane radio club',
    permit: 'E-2026-017',
    revision: 'B',
    prepared: { by: 'station committee', for: 'permit office', date: '2026-05-02' },
    northDeg: 20,
    claims: null,
    temporary: 'no',
  },
  state: { id: 'as typed', says: null },
  states: [
    { id: 'storm', says: 'coax pulled at the desk' },
    { id: 'winter', says: null },
  ],
  codes: [{ document: 'national electrical code', edition: '2020', amendments: 'county ordinance of 2021' }],
  buildings: clubBuildings,
  parts: clubParts,
  assumptions: [
    { path: 'electrodes.E-shack.top', taken: '0 ft (0 m)', effect: 'A deeper top gives a lower resistance.' },
    { path: 'joints', taken: 'Joints without a reading have the range of resistance of their kind.', effect: '' },
  ],
  unknowns: [
    {
      path: 'conductors.thick-one',
      why: 'Nobody knows where this end goes.',
      settle: 'Trace it, or measure continuity to the parts near it.',
      line: 84,
      column: 3,
    },
    {
      path: 'lines (cable tv)',
      why: 'Whether a cable tv line comes in was not said.',
      settle: 'Type the cable tv line, or `site.without: [cable tv]` if none comes in.',
      line: null,
      column: null,
    },
  ],
  questions: [
    { path: 'supports.mast-east.height', line: 41, column: 12, text: 'The height is 25 in as typed; was 25 ft meant?' },
  ],
  bonding: clubBonding,
  paths,
  lines,
  reachInStates: [],
  reach: [
    {
      part: 'hf-radio',
      by: [
        { line: 'line1', from: 'beam' },
        { line: 'line4', from: 'gps' },
        { line: 'outlet', from: 'sub-panel' },
      ],
    },
    { part: 'modem', by: [{ line: 'phone', from: 'street' }] },
    { part: 'tuner', by: [] },
  ],
  conductors,
  joints,
  guys: [],
  arresters,
  earth,
  strikes: [],
  findings: clubFindings,
  conditions: clubConditions,
  verdict: {
    hazards: 2,
    defects: 2,
    advices: 1,
    cannotTell: 3,
    agreed: 1,
    text: [
      '2 findings that can hurt people or start a fire, 2 that break a clause or are likely to cost equipment, 1 of advice.',
      '3 grounding electrodes are outside the system of the service: E-shack, ring, tower-rods.',
      '3 conditions could not be told from what the file says; the list of things to look at says how to settle each.',
    ],
    actions: [
      {
        finding: 'all-electrodes-one-system:E-shack',
        text: 'Run a bonding conductor outside the building from E-shack to the grounding electrode system of the service.',
      },
      {
        finding: 'separation:gas+c8',
        text: 'Bond the gas pipe at its entry to the system of the service, by the gas supplier or a licensed electrician.',
      },
      {
        finding: 'telephone-protector-bonded:phone-block',
        text: 'Find out: look for the conductor from phone-block to isb.',
      },
    ],
  },
  sources: [memory('NFPA 70', '2020', '250.50'), memory('IEEE Std 142', '2007', 'table 4-5'), ours],
};
