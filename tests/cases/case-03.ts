import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-03',
  title: 'Everything unplugged, everything destroyed: the unbonded shack rod',
  sources: [
    'http://lists.contesting.com/archives/html/Towertalk/2003-01/msg00473.html',
    'http://lists.contesting.com/archives/html/Towertalk/2003-05/msg00266.html',
  ],
  grade: 'A',
  dissent: 'The bond was agreed. Whether to lift the ground lead and the mains as well when disconnecting was not.',
  files: ['case-03.site.yaml', 'case-03-after.site.yaml'],
  must: [
    { says: 'Tower rods and shack rods are two groups.', ask: { apart: ['tower', 'shack-bar'] } },
    { says: 'The shack ground is not the ground of the service either.', ask: { apart: ['shack-bar', 'main-panel'] } },
    {
      says: 'The three rods of the tower are one group through its legs.',
      ask: { together: ['tower', 'tower-rod-1', 'tower-rod-2', 'tower-rod-3'] },
    },
    { says: 'The rods of the tower are unbonded.', ask: { unbonded: 'tower-rod-1' } },
    {
      says: 'The rods of the shack are a second system.',
      ask: { finding: 'all-electrodes-one-system', at: 'shack-rods', severity: 'hazard' },
    },
    {
      says: 'Unplugging the coax does not clear the finding.',
      ask: { finding: 'all-electrodes-one-system', at: 'shack-rods', severity: 'hazard' },
      inState: 'storm',
    },
    { says: 'Nor does it bond the rods of the tower.', ask: { unbonded: 'tower-rod-1' }, inState: 'storm' },
    {
      says: 'With all coax off, the units on the bar bridge the shack ground and the mains.',
      ask: { bridgedBy: 'gear' },
      inState: 'storm',
    },
    {
      says: 'So does the control box on the same bar.',
      ask: { bridgedBy: 'rotator-box' },
      inState: 'storm',
    },
    { says: 'The mains still reaches the units.', ask: { reaches: ['gear', 'outlet'], state: 'storm' } },
    {
      says: 'Where the pulled ends hang was not told.',
      ask: { finding: 'spare-and-disconnected-lines', at: 'coax', outcome: 'cannot tell' },
      inState: 'storm',
    },
    {
      says: 'Bonded, tower, shack and service are one system.',
      ask: { together: ['tower', 'tower-rod-3', 'shack-rods', 'shack-bar', 'main-panel'] },
      ofFile: 'case-03-after.site.yaml',
    },
  ],
  mustNot: [
    { says: 'A feed line never joins tower and shack into one system.', ask: { together: ['tower', 'shack-bar'] } },
    {
      says: 'A power cord does not join the shack bar and the service.',
      ask: { together: ['shack-bar', 'main-panel'] },
    },
    {
      says: 'Unplugged is not the same as bonded.',
      ask: { finding: 'all-electrodes-one-system', at: 'shack-rods', outcome: 'met' },
      inState: 'storm',
    },
    { says: 'The tower has its rods.', ask: { finding: 'mast-grounded', at: 'tower' } },
    { says: 'An 8 ft rod is long enough.', ask: { finding: 'rod-length-us', at: 'tower-rod-1' } },
    {
      says: 'A rod with two others on the same tower does not stand alone.',
      ask: { finding: 'single-rod-25-ohm', at: 'tower-rod-1' },
    },
    { says: 'Units on the bar are tied to something.', ask: { finding: 'no-orphan-equipment', at: 'gear' } },
    {
      says: 'Bonded, the shack rods are not reported as apart.',
      ask: { unbonded: 'shack-rods' },
      ofFile: 'case-03-after.site.yaml',
    },
    {
      says: 'Nor the rods of the tower.',
      ask: { finding: 'all-electrodes-one-system', at: 'tower-rod-1' },
      ofFile: 'case-03-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence:
        'The difference between tower and shack is current times impedance, not zero, with no feed line between.',
      because: 'needs the strike calculation',
    },
    {
      sentence: 'If you disconnect, take off the ground lead and the mains too.',
      because: 'disputed by the thread itself',
    },
  ],
};
