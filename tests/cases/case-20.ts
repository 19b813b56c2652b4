import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-20',
  title: 'Garage shack on a feeder; neutral bonded twice; tower not tied',
  sources: [
    'http://lists.contesting.com/archives/html/Towertalk/2014-09/msg00125.html',
    'http://lists.contesting.com/archives/html/Towertalk/2014-09/msg00126.html',
  ],
  grade: 'A',
  files: ['case-20.site.yaml', 'case-20-after.site.yaml'],
  must: [
    {
      says: 'The neutral is bonded a second time in the garage.',
      ask: { finding: 'neutral-bonded-once', at: 'garage-panel', severity: 'hazard' },
    },
    { says: 'The tower is not tied to the ground of the shack.', ask: { apart: ['tower-rods', 'shack-ground'] } },
    {
      says: 'Removable cables are its only tie.',
      ask: { finding: 'screens-not-sole-bond', at: 'tower-rods' },
    },
    { says: 'They bridge the two systems while plugged in.', ask: { bridgedBy: 'coax' } },
    { says: 'The rods of the tower do not reach the service.', ask: { unbonded: 'tower-rods' } },
    {
      says: 'Who pulls a plug at the connector panel stands between two earths.',
      ask: { finding: 'shelters-within-reach-bonded', at: 'connector-panel', severity: 'hazard' },
    },
    {
      says: 'With the cables pulled the tower is as far apart as before.',
      ask: { unbonded: 'tower-rods' },
      inState: 'storm',
    },
    {
      says: 'Panel, shack ground and service are one system, by the feeder.',
      ask: { together: ['connector-panel', 'shack-ground', 'garage-panel', 'main-panel'] },
    },
    {
      says: 'Bonded for good, tower and shack are one system.',
      ask: { together: ['tower', 'tower-rods', 'shack-ground', 'connector-panel', 'garage-panel'] },
      ofFile: 'case-20-after.site.yaml',
    },
    {
      says: 'And it stays so with the cables pulled.',
      ask: { together: ['tower', 'connector-panel'] },
      ofFile: 'case-20-after.site.yaml',
      inState: 'storm',
    },
  ],
  mustNot: [
    { says: 'Cables do not count as a bond.', ask: { together: ['tower', 'connector-panel'] } },
    {
      says: 'At the service the neutral bond is where it belongs.',
      ask: { finding: 'neutral-bonded-once', at: 'main-panel' },
    },
    {
      says: 'The garage has an electrode.',
      ask: { finding: 'separate-building-electrode', at: 'garage-panel' },
    },
    { says: 'The tower has its rods.', ask: { finding: 'mast-grounded', at: 'tower' } },
    {
      says: 'One bond of the neutral is no finding.',
      ask: { finding: 'neutral-bonded-once', at: 'garage-panel' },
      ofFile: 'case-20-after.site.yaml',
    },
    {
      says: 'With the bond nobody stands between two earths.',
      ask: { finding: 'shelters-within-reach-bonded', at: 'connector-panel' },
      ofFile: 'case-20-after.site.yaml',
    },
    {
      says: 'With the bond the cables are not the sole tie.',
      ask: { finding: 'screens-not-sole-bond', at: 'tower-rods' },
      ofFile: 'case-20-after.site.yaml',
    },
    {
      says: 'Nor is the tower reported as apart.',
      ask: { unbonded: 'tower-rods' },
      ofFile: 'case-20-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'A helper has a similar site: buildings 30 ft apart, three rods at the service.',
      because: 'a second site, of which no more was told',
    },
  ],
};
