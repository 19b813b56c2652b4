import type { Study } from '../../src/study/study.ts';
import { finding, memory, ours } from './sample-findings.ts';
import { part } from './sample-parts.ts';
import { houseSoil } from './sample-soil-iec.ts';

const m = (low: number, high = low) => ({ low, high });
const outside = { where: 'outside' };
const house = { where: 'house' };
const rod = { length: '1.5 m', diameter: '16 mm', metal: 'copper-clad steel' };

const parts: Study['parts'] = [
  part('electrodes', 'rod-house', 'rod', null, { ...outside, typed: rod, group: 'rod-house' }),
  part('electrodes', 'rod-mast', 'rod', null, { ...outside, typed: rod, group: 'mast' }),
  part('electrodes', 'slab', 'concrete-encased', null, {
    ...outside,
    typed: { length: 'over 6 m' },
    group: 'rod-house',
    known: 'told',
  }),
  part('supports', 'mast', 'mast', null, { ...outside, typed: { height: '10 m' }, group: 'mast', heightM: m(10) }),
  part('antennas', 'vertical', 'vertical', null, { ...outside, on: 'mast@top', group: 'mast' }),
  part('antennas', 'loop', 'loop', null, {
    ...outside,
    typed: { length: '84 m' },
    group: 'loop',
    note: 'fed in the attic\nby the north gable',
  }),
  part('bars', 'main-bar', 'main earthing bar', null, { ...house, group: 'rod-house' }),
  part('bars', 'plate', 'entry panel', null, { ...outside, group: 'plate', photos: ['plate.jpg'] }),
  part('arresters', 'tube-1', 'gas tube', null, { ...outside, on: 'plate', group: 'plate' }),
  part('equipment', 'board', 'service panel', null, { ...house, typed: { rating: '63 A' }, group: 'rod-house' }),
  part('equipment', 'radio', 'transceiver', null, { ...house, typed: { power: '100 W' }, group: 'radio' }),
  part('equipment', 'router', 'router', null, { where: null, group: 'router' }),
  part('lines', 'feed-1', 'coax', null, { where: null }),
  part('lines', 'feed-2', 'coax', null, { where: null }),
  part('lines', 'socket', 'mains', null, { where: null }),
  part('conductors', 'w1', 'conductor', null, { where: null }),
  part('conductors', 'w2', 'conductor', null, { where: null }),
  part('conductors', 'w3', 'conductor', null, { where: null }),
  part('joints', 'clamp', 'rod clamp', null, { ...outside, on: 'rod-house', group: 'rod-house' }),
  part('metalwork', 'water', 'water pipe', null, { ...house, typed: { continuous: 'unknown' }, group: 'water' }),
];

const group = (id: string, electrodes: readonly string[], of: readonly string[], hasService = false) => ({
  id,
  electrodes,
  parts: of,
  hasService,
  byFeeder: [],
});

const bonding: Study['bonding'] = {
  groups: [
    group('loop', [], ['loop']),
    group('mast', ['rod-mast'], ['mast', 'rod-mast', 'vertical']),
    group('plate', [], ['plate', 'tube-1']),
    group('radio', [], ['radio']),
    group('rod-house', ['rod-house', 'slab'], ['board', 'clamp', 'main-bar', 'rod-house', 'slab'], true),
    group('router', [], ['router']),
    group('water', [], ['water']),
  ],
  unbondedElectrodes: ['rod-mast'],
  perhapsUnbonded: [],
  bridges: [{ groups: ['mast', 'plate'], tie: 'shield', parts: ['feed-1'], certain: true }],
  weakPoints: [
    {
      at: 'w1',
      kind: 'conductor',
      losesService: ['main-bar'],
      losesEarth: ['board'],
      electrodesLost: ['rod-house'],
      noticed: 'buried',
      certain: true,
    },
  ],
  openRings: [{ at: 'loop', why: 'Its ends do not meet.' }],
  tiedToNothing: ['router'],
  ties: [
    { a: 'main-bar', b: 'clamp', kind: 'metal', is: 'there', part: 'w1' },
    { a: 'clamp', b: 'rod-house', kind: 'metal', is: 'there', part: 'clamp' },
    { a: 'board', b: 'main-bar', kind: 'metal', is: 'there', part: 'w2' },
    { a: 'main-bar', b: 'slab', kind: 'metal', is: 'there', part: 'slab' },
    { a: 'mast', b: 'rod-mast', kind: 'metal', is: 'there', part: 'w3' },
    { a: 'mast', b: 'vertical', kind: 'metal', is: 'there', part: 'vertical' },
    { a: 'plate', b: 'tube-1', kind: 'metal', is: 'there', part: 'tube-1' },
    { a: 'vertical', b: 'tube-1', kind: 'shield', is: 'there', part: 'feed-1' },
    { a: 'tube-1', b: 'radio', kind: 'shield', is: 'there', part: 'feed-1' },
    { a: 'loop', b: 'radio', kind: 'shield', is: 'there', part: 'feed-2' },
    { a: 'board', b: 'radio', kind: 'cord', is: 'there', part: 'socket' },
    { a: 'water', b: 'main-bar', kind: 'metal', is: 'unknown', part: 'water' },
  ],
};

const wire = {
  wire: '16 mm2 copper',
  areaM2: m(16e-6),
  lengthM: m(2, 3),
  resistanceOhm: m(0.002, 0.003),
  inductanceH: m(2.2e-6, 3.6e-6),
  bendsDeg: 0,
};
const iec = memory('IEC 60728-11', '2016', '11.3.2');

/** An invented house in a country of the other vocabulary, hand-written, without a single position. */
export const houseStudy: Study = {
  format: 1,
  tool: { name: 'evenground', version: '0.1.0' },
  site: {
    name: 'Haus am Steinbruch',
    region: 'iec',
    units: 'm',
    file: 'haus.site.yaml',
    checksum: '0a3f9c51e7d24b8896f1c2d3e4b5a6978877665544332211ffeeddccbbaa0099',
    service: 'board',
    supply: 'tt',
    address: null,
    owner: null,
    permit: null,
    revision: null,
    prepared: { by: null, for: null, date: null },
    northDeg: 0,
    claims: 'III',
    temporary: 'no',
  },
  state: { id: 'storm', says: 'feed lines pulled' },
  states: [{ id: 'storm', says: 'feed lines pulled' }],
  codes: [],
  buildings: [{ id: 'house', cornersM: [], heightM: null }],
  parts,
  assumptions: [],
  unknowns: [
    {
      path: 'metalwork.water.continuous',
      why: 'Whether the pipe is one piece of metal is not known.',
      settle: 'Look for plastic pieces, or measure along it.',
      line: 30,
      column: 5,
    },
  ],
  questions: [],
  bonding,
  paths: [],
  lines: [
    {
      id: 'feed-1',
      kind: 'coax',
      stops: ['vertical', 'tube-1', 'radio'],
      crossings: [],
      conductors: [
        { which: 'shield', count: 1, bondedAt: ['plate'], protectedBy: [], drainedBy: [], unprotected: null },
      ],
    },
    { id: 'feed-2', kind: 'coax', stops: ['loop', 'plug j1', 'radio'], crossings: [], conductors: [] },
    {
      id: 'socket',
      kind: 'mains',
      stops: ['board', 'radio'],
      crossings: [],
      conductors: [{ which: 'protective', count: 1, bondedAt: [], protectedBy: [], drainedBy: [], unprotected: null }],
    },
  ],
  reachInStates: [],
  reach: [],
  conductors: [
    { id: 'w1', role: 'service electrode wire', from: 'main-bar', to: 'clamp', buried: 'yes', ...wire },
    { id: 'w2', role: 'bond', from: 'board', to: 'main-bar', buried: 'no', ...wire },
    { id: 'w3', role: 'mast lead', from: 'mast@base', to: 'rod-mast', buried: 'unknown', ...wire },
  ],
  joints: [
    {
      id: 'clamp',
      kind: 'rod clamp',
      holds: ['w1'],
      on: 'rod-house',
      resistanceOhm: m(1e-4, 5e-3),
      listed: 'unknown',
      forBurial: 'unknown',
      buried: 'yes',
      accessible: 'unknown',
      condition: 'unknown',
    },
  ],
  guys: [],
  arresters: [
    {
      id: 'tube-1',
      kind: 'gas tube',
      on: 'plate',
      lines: ['feed-1'],
      where: 'outside',
      leadM: null,
      listed: 'unknown',
      sparkoverV: m(230),
      bonded: 'yes',
    },
  ],
  earth: {
    ...houseSoil,
    resistanceOhm: null,
    withServicesOhm: null,
    groups: [],
    soil: null,
    parts: [],
    couplingLeftOut: [],
    residual: 0,
    worstAt: null,
    electrodes: [
      {
        id: 'rod-house',
        aloneOhm: null,
        currentShare: null,
        inGroupOhm: null,
        how: 'unknown',
        formula: null,
        source: null,
        group: 'rod-house',
      },
    ],
  },
  strikes: [],
  findings: [
    finding(
      'iec-antenna-electrode-to-main-bar',
      ['rod-mast'],
      'The earth electrode rod-mast is not tied to the main earthing terminal',
      {
        severity: 'hazard',
        codeSet: 'iec',
        why: 'No permanent metal joins rod-mast to main-bar.',
        source: iec,
        remedy: 'Run at least 16 mm² (31.6 kcmil) copper from rod-mast to the main earthing terminal.',
        measured: { value: 0, unit: '', limit: 1, text: '0; at least 1 is asked' },
      },
    ),
  ],
  conditions: [
    {
      rule: 'iec-antenna-electrode-to-main-bar',
      family: 'code',
      codeSet: 'iec',
      severity: 'hazard',
      title: 'The antenna’s earth electrode is tied to the main earthing terminal',
      source: iec,
      outcome: 'not met',
      met: 0,
      notMet: 1,
      cannotTell: 0,
      because: '',
    },
  ],
  verdict: {
    hazards: 1,
    defects: 0,
    advices: 0,
    cannotTell: 0,
    agreed: 0,
    text: [
      '1 finding that can hurt people or start a fire.',
      'One earth electrode is outside the system of the supply intake: rod-mast.',
      'Nothing was left that could not be told from what the file says.',
    ],
    actions: [
      {
        finding: 'iec-antenna-electrode-to-main-bar:rod-mast',
        text: 'Run at least 16 mm² (31.6 kcmil) copper from rod-mast to the main earthing terminal.',
      },
    ],
  },
  sources: [iec, ours],
};
