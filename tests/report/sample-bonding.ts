import type { Study } from '../../src/study/study.ts';

type Tie = Study['bonding']['ties'][number];

function tie(a: string, b: string, part: string, kind = 'metal', is = 'there'): Tie {
  return { a, b, kind, is, part };
}

function group(
  id: string,
  electrodes: readonly string[],
  parts: readonly string[],
  hasService = false,
  byFeeder: readonly string[] = [],
) {
  return { id, electrodes, parts, hasService, byFeeder };
}

const alone = [
  ...['computer', 'dipole', 'fence', 'gas', 'generator', 'gps', 'gutter', 'long-receive-wire', 'modem', 'phone-block'],
  ...['power-supply', 'roof-mast', 'rotator-box', 'tower-footing'],
];

export const clubBonding: Study['bonding'] = {
  groups: [
    group(
      'E-service',
      ['E-service', 'water-pipe'],
      ['E-service', 'clamp1', 'isb', 'main-panel', 'mains-spd', 'sub-panel', 'water-pipe'],
      true,
      ['sub-panel'],
    ),
    group(
      'E-shack',
      ['E-shack'],
      ['E-shack', 'a1', 'a2', 'a3', 'clamp2', 'entry', 'hf-radio', 'station-bar', 'tuner', 'vhf-radio'],
    ),
    group('mast-east', [], ['jpole', 'mast-east']),
    group(
      'ring',
      ['ring', 'tower-rods'],
      ['beam', 'ring', 'rotor-protector', 'tower', 'tower-bar', 'tower-rods', 'weld1'],
    ),
    ...alone.map((id) => group(id, id === 'tower-footing' ? [id] : [], [id])),
  ].sort((a, b) => (a.id < b.id ? -1 : 1)),
  unbondedElectrodes: ['E-shack', 'ring', 'tower-rods'],
  perhapsUnbonded: [{ electrode: 'tower-footing', decidedBy: ['electrodes.tower-footing.cage'] }],
  bridges: [
    { groups: ['E-service', 'E-shack'], tie: 'cord', parts: ['outlet'], certain: false },
    { groups: ['E-shack', 'ring'], tie: 'shield', parts: ['line1', 'line2'], certain: true },
    { groups: ['E-shack', 'mast-east'], tie: 'shield', parts: ['line3'], certain: true },
  ],
  weakPoints: [
    {
      at: 'clamp2',
      kind: 'joint',
      losesService: [],
      losesEarth: ['a1', 'a2', 'a3', 'entry'],
      electrodesLost: ['E-shack'],
      noticed: 'visible',
      certain: true,
    },
    {
      at: 'c3',
      kind: 'conductor',
      losesService: [],
      losesEarth: ['a1', 'a2', 'a3', 'entry'],
      electrodesLost: ['E-shack'],
      noticed: 'buried',
      certain: true,
    },
    {
      at: 'entry',
      kind: 'part',
      losesService: [],
      losesEarth: ['a1', 'a2', 'a3'],
      electrodesLost: [],
      noticed: 'visible',
      certain: true,
    },
    {
      at: 'c1:main-panel',
      kind: 'joint',
      losesService: ['water-pipe'],
      losesEarth: [],
      electrodesLost: [],
      noticed: 'in a wall',
      certain: false,
    },
  ],
  openRings: [],
  tiedToNothing: ['gps', 'roof-mast'],
  ties: [
    tie('main-panel', 'clamp1', 'c1'),
    tie('clamp1', 'E-service', 'clamp1'),
    tie('main-panel', 'water-pipe', 'c2'),
    tie('main-panel', 'isb', 'c9'),
    tie('main-panel', 'mains-spd', 'mains-spd'),
    tie('main-panel', 'sub-panel', 'feeder-bond', 'feeder'),
    tie('entry', 'clamp2', 'c3'),
    tie('clamp2', 'E-shack', 'clamp2'),
    tie('a1', 'entry', 'a1'),
    tie('a2', 'entry', 'a2'),
    tie('a3', 'entry', 'a3'),
    tie('entry', 'station-bar', 'c4'),
    tie('station-bar', 'hf-radio', 'c5'),
    tie('station-bar', 'vhf-radio', 'c6'),
    tie('station-bar', 'tuner', 'c7'),
    tie('entry', 'hf-radio', 'line1', 'shield'),
    tie('tower', 'tower-bar', 'tower-bar'),
    tie('tower-bar', 'rotor-protector', 'rotor-protector'),
    tie('tower', 'tower-rods', 'c8'),
    tie('tower-rods', 'weld1', 'ring'),
    tie('weld1', 'ring', 'weld1'),
    tie('tower', 'ring', 'ring'),
    tie('tower', 'beam', 'beam'),
    tie('mast-east', 'jpole', 'jpole'),
    tie('tower', 'a1', 'line1', 'shield'),
    tie('tower', 'a2', 'line2', 'shield'),
    tie('jpole', 'a3', 'line3', 'shield'),
    tie('dipole', 'a2', 'line2', 'shield'),
    tie('gps', 'hf-radio', 'line4', 'shield'),
    tie('rotor-protector', 'rotator-box', 'rotor', 'core'),
    tie('sub-panel', 'power-supply', 'outlet', 'cord'),
    tie('sub-panel', 'hf-radio', 'outlet', 'cord'),
    tie('modem', 'computer', 'network', 'shield'),
    tie('phone-block', 'isb', 'phone-block', 'metal', 'unknown'),
    tie('phone-block', 'modem', 'phone', 'core'),
    tie('tower', 'tower-footing', 'tower-footing', 'metal', 'unknown'),
    tie('gutter', 'roof-mast', 'gutter', 'loose-metal', 'unknown'),
    tie('dipole', 'tower', 'dipole', 'drain'),
  ],
};
