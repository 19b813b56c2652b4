import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-30',
  title: 'Several 190 ft towers, 450-500 ft from the shack',
  sources: ['http://lists.contesting.com/archives/html/Towertalk/2018-04/msg00275.html'],
  grade: 'B',
  dissent:
    'From what distance on a bond between tower and shack adds nothing in a strike: 60 ft by one rule of thumb, 100 ft by another. Agreed by all: a robust earth at the tower and a complete entry panel.',
  files: ['case-30.site.yaml', 'case-30-bond.site.yaml'],
  must: [
    {
      says: 'Each tower has an earth of its own: steel, trenches and rods are one.',
      ask: { together: ['tower-1', 'star-1', 'rods-1'] },
    },
    { says: 'So has the second.', ask: { together: ['tower-2', 'star-2', 'rods-2'] } },
    { says: 'No bond ties the nearest tower to the shack.', ask: { apart: ['tower-1', 'entry'] } },
    { says: 'Nor the farthest.', ask: { apart: ['tower-2', 'entry'] } },
    { says: 'Nor one tower to the other.', ask: { apart: ['tower-1', 'tower-2'] } },
    {
      says: 'The earth of the tower is tied by shields only.',
      ask: { finding: 'screens-not-sole-bond', at: 'star-1' },
    },
    { says: 'The same for the second.', ask: { finding: 'screens-not-sole-bond', at: 'star-2' } },
    { says: 'It is the feed line that bridges tower and shack.', ask: { bridgedBy: 'feed-1' } },
    {
      says: 'The entry panel is bonded 6 in from the service ground.',
      ask: { way: ['entry', 'service-ground'], lengthM: [0.137, 0.168] },
    },
    {
      says: '450 ft of #2, straight, comes to 290 uH.',
      ask: { way: ['star-1', 'entry'], lengthM: [137.1, 137.2], inductanceH: [261e-6, 319e-6] },
      ofFile: 'case-30-bond.site.yaml',
    },
    {
      says: 'A bond that long is told as long.',
      ask: { finding: 'bond-between-groups-long', at: 'tie-1', severity: 'advice' },
      ofFile: 'case-30-bond.site.yaml',
    },
    {
      says: 'It is a bond all the same.',
      ask: { together: ['tower-1', 'star-1', 'entry', 'service-ground'] },
      ofFile: 'case-30-bond.site.yaml',
    },
  ],
  mustNot: [
    { says: 'The towers are grounded where they stand.', ask: { finding: 'mast-grounded', at: 'tower-1' } },
    { says: 'Shields make no system of tower and shack.', ask: { together: ['tower-1', 'entry'] } },
    { says: 'Twenty-four rods are no lone rod.', ask: { finding: 'single-rod-25-ohm', at: 'rods-1' } },
    { says: 'Two lengths apart is as wide as asked.', ask: { finding: 'rod-spacing-effective', at: 'rods-1' } },
    { says: 'And wider than the least.', ask: { finding: 'rod-spacing-minimum', at: 'rods-1' } },
    { says: 'An 8 ft rod is long enough.', ask: { finding: 'rod-length-us', at: 'rods-1' } },
    {
      says: 'An exothermic joint is an allowed one.',
      ask: { finding: 'joint-method-allowed', at: 'drop-1:to' },
    },
    { says: 'The panel is tied to the service.', ask: { finding: 'panel-tied-to-service', at: 'entry' } },
    { says: 'And by a short way.', ask: { finding: 'bond-run-short', at: 'entry' } },
    {
      says: 'Every shield is bonded on the panel before it goes in.',
      ask: { finding: 'shield-bonded-at-entry', at: 'feed-1' },
    },
    {
      says: 'With the bond the earth of the tower is not reported as apart.',
      ask: { unbonded: 'star-1' },
      ofFile: 'case-30-bond.site.yaml',
    },
    {
      says: 'Nor are shields its sole tie.',
      ask: { finding: 'screens-not-sole-bond', at: 'star-1' },
      ofFile: 'case-30-bond.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Remote, local earth adequate: no bond asked beyond a distance that the owner sets, with its reason.',
      because: 'no rule takes a distance; and where it lies was disputed',
    },
    {
      sentence: 'The rods stand on six arms, four to an arm.',
      because: 'the trenches are typed as radials and the rods as one group beside them; the plan needs positions',
    },
    { sentence: 'Very few problems in use.', because: 'an experience, not a property of the layout' },
  ],
};
