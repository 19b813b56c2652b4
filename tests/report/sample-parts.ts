import type { Study, StudyPart } from '../../src/study/study.ts';

type Place = readonly [number, number, number];

/** A part with what every part has, the rest as given. Positions are in metres. */
export function part(
  section: string,
  id: string,
  kind: string,
  positionM: Place | null,
  rest: Partial<StudyPart> = {},
): StudyPart {
  return {
    id,
    section,
    kind,
    present: 'yes',
    known: 'seen',
    condition: 'sound',
    where: 'outside',
    on: null,
    place: null,
    owner: null,
    count: 1,
    note: null,
    photos: [],
    positionM,
    routeM: [],
    heightM: null,
    typed: { kind },
    group: null,
    ...rest,
  };
}

const shack: Place = [13.4, 7.3, 0.8];
const entryAt: Place = [14.8, 7.3, 0.6];
const towerAt: Place = [23.5, 13.2, 0];
const serviceAt: Place = [0.2, 0.2, 1];
const rod = { length: '8 ft', diameter: '5/8 in', metal: 'copper-clad steel' };

/** Parts of an invented club station: three groups, lone pieces, everything that a page has to number. */
export const clubParts: readonly StudyPart[] = [
  part('electrodes', 'E-service', 'rod', [0, -0.3, 0], {
    typed: rod,
    group: 'E-service',
    known: 'told',
    photos: ['meter-wall.jpg'],
  }),
  part('electrodes', 'E-shack', 'rod', [15.6, 6.6, 0], { typed: rod, group: 'E-shack' }),
  part('electrodes', 'ring', 'buried wire', [23.5, 13.2, -0.7], {
    typed: { length: '62 ft', depth: '30 in', wire: '2 AWG tinned copper', closed: 'yes' },
    group: 'ring',
    routeM: [
      [20.5, 10.2, -0.7],
      [26.5, 10.2, -0.7],
      [26.5, 16.2, -0.7],
      [20.5, 16.2, -0.7],
      [20.5, 10.2, -0.7],
    ],
  }),
  part('electrodes', 'tower-footing', 'concrete-encased', towerAt, {
    typed: { cage: 'unknown' },
    group: 'tower-footing',
    known: 'told',
    present: 'unknown',
  }),
  part('electrodes', 'tower-rods', 'rods', towerAt, { typed: { ...rod, spacing: '16 ft' }, count: 3, group: 'ring' }),
  part('electrodes', 'water-pipe', 'pipe', [1.5, -0.6, -0.9], { typed: { length: '30 ft' }, group: 'E-service' }),
  part('supports', 'mast-east', 'mast', [33, 4, 0], {
    heightM: { low: 7.62, high: 7.62 },
    typed: { height: '25 ft' },
    group: 'mast-east',
    condition: 'corroded',
  }),
  part('supports', 'roof-mast', 'roof mast', [7, 4.5, 5], { typed: { height: '6 ft' }, group: 'roof-mast' }),
  part('supports', 'tower', 'lattice tower', towerAt, {
    typed: { height: '50 ft', legs: '3', metal: 'galvanised steel' },
    group: 'ring',
  }),
  part('antennas', 'beam', 'yagi', [23.5, 13.2, 15.2], { on: 'tower@50 ft', group: 'ring' }),
  part('antennas', 'dipole', 'half-wave dipole', [23.5, 13.2, 13.7], { on: 'tower@45 ft', group: 'dipole' }),
  part('antennas', 'gps', 'GPS', [7, 4.5, 7], { on: 'roof-mast@top', group: 'gps' }),
  part('antennas', 'jpole', 'J-pole', [33, 4, 7.6], { on: 'mast-east@top', group: 'mast-east' }),
  part('antennas', 'long-receive-wire', 'long wire', null, { typed: { length: '400 ft' }, group: 'long-receive-wire' }),
  part('bars', 'entry', 'entry panel', entryAt, { typed: { terminals: '12' }, group: 'E-shack' }),
  part('bars', 'isb', 'intersystem bonding termination', [0.6, -0.1, 1], { group: 'E-service' }),
  part('bars', 'station-bar', 'station ground bar', shack, { where: 'clubhouse', group: 'E-shack' }),
  part('bars', 'tower-bar', 'tower bar', [23.2, 12.8, 0.5], { on: 'tower@base', group: 'ring' }),
  part('arresters', 'a1', 'gas tube', entryAt, { on: 'entry', group: 'E-shack' }),
  part('arresters', 'a2', 'gas tube', entryAt, { on: 'entry', group: 'E-shack' }),
  part('arresters', 'a3', 'quarter-wave stub', entryAt, { on: 'entry', group: 'E-shack' }),
  part('arresters', 'mains-spd', 'mains protector', serviceAt, {
    on: 'main-panel',
    where: 'clubhouse',
    group: 'E-service',
  }),
  part('arresters', 'phone-block', 'telephone protector', [0.9, -0.1, 1.2], { known: 'told', group: 'phone-block' }),
  part('arresters', 'rotor-protector', 'control protector', [23.2, 12.8, 0.5], { on: 'tower-bar', group: 'ring' }),
  part('equipment', 'computer', 'computer', shack, { where: 'clubhouse', group: 'computer' }),
  part('equipment', 'generator', 'generator', [-4, 6, 0], { group: 'generator', present: 'unknown' }),
  part('equipment', 'hf-radio', 'transceiver', shack, {
    where: 'clubhouse',
    typed: { power: '100 W' },
    group: 'E-shack',
  }),
  part('equipment', 'main-panel', 'service panel', serviceAt, {
    where: 'clubhouse',
    typed: { rating: '100 A' },
    group: 'E-service',
    photos: ['meter-wall.jpg', 'panel.jpg'],
  }),
  part('equipment', 'modem', 'modem', [3, 0.6, 1], { where: 'clubhouse', group: 'modem' }),
  part('equipment', 'power-supply', 'power supply', shack, { where: 'clubhouse', group: 'power-supply' }),
  part('equipment', 'rotator-box', 'controller', shack, { where: 'clubhouse', group: 'rotator-box' }),
  part('equipment', 'sub-panel', 'sub-panel', [12.9, 8.6, 1.4], { where: 'clubhouse', group: 'E-service' }),
  part('equipment', 'tuner', 'tuner', shack, { where: 'clubhouse', group: 'E-shack' }),
  part('equipment', 'vhf-radio', 'transceiver', shack, {
    where: 'clubhouse',
    typed: { power: '50 W' },
    group: 'E-shack',
  }),
  part('lines', 'line1', 'coax', null, {
    where: null,
    routeM: [towerAt, [19, 9, 0], entryAt, shack],
    typed: { buried: 'yes' },
  }),
  part('lines', 'line2', 'coax', null, {
    where: null,
    routeM: [towerAt, [19, 8.6, 0], entryAt, shack],
    typed: { buried: 'yes' },
  }),
  part('lines', 'line3', 'coax', null, { where: null, routeM: [[33, 4, 7], entryAt, shack] }),
  part('lines', 'line4', 'coax', null, { where: null, routeM: [[7, 4.5, 7], shack] }),
  part('lines', 'network', 'network', null, { where: null, routeM: [[3, 0.6, 1], shack] }),
  part('lines', 'outlet', 'mains', null, { where: null, routeM: [[12.9, 8.6, 1.4], shack] }),
  part('lines', 'phone', 'telephone', null, {
    where: null,
    routeM: [
      [-6, -2, -0.5],
      [0.9, -0.1, 1.2],
      [3, 0.6, 1],
    ],
    typed: { buried: 'yes' },
  }),
  part('lines', 'rotor', 'control', null, { where: null, routeM: [towerAt, shack] }),
  ...['c1', 'c2', 'c3', 'c4', 'c5', 'c6', 'c7', 'c8', 'c9', 'feeder-bond', 'thick-one'].map((id) =>
    part('conductors', id, 'conductor', null, { where: null, known: id === 'thick-one' ? 'told' : 'seen' }),
  ),
  part('joints', 'clamp1', 'acorn clamp', [0, -0.3, 0], { on: 'E-service', group: 'E-service' }),
  part('joints', 'clamp2', 'hose clamp', [15.6, 6.6, 0], { on: 'E-shack', group: 'E-shack', condition: 'corroded' }),
  part('joints', 'weld1', 'exothermic weld', [20.5, 13.2, -0.7], { on: 'ring', group: 'ring' }),
  part('metalwork', 'fence', 'fence', [36, 10, 0], {
    routeM: [
      [36, -3, 0],
      [36, 20, 0],
    ],
    group: 'fence',
  }),
  part('metalwork', 'gas', 'gas pipe', [-3, 1.2, -0.6], {
    routeM: [
      [0, 1.2, -0.6],
      [-9, 1.2, -0.6],
    ],
    typed: { buried: 'yes' },
    group: 'gas',
  }),
  part('metalwork', 'gutter', 'gutter', [7, 9.1, 3], {
    routeM: [
      [0, 9.1, 3],
      [14.6, 9.1, 3],
    ],
    group: 'gutter',
  }),
];

export const clubBuildings: Study['buildings'] = [
  {
    id: 'clubhouse',
    cornersM: [
      [0, 0, 0],
      [14.63, 0, 0],
      [14.63, 9.14, 0],
      [0, 9.14, 0],
    ],
    heightM: { low: 4.9, high: 4.9 },
  },
];
