import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-10',
  title: 'Second-floor shack, 110 ft of #6',
  sources: ['http://lists.contesting.com/_towertalk/2002-02/msg00625.html'],
  grade: 'A',
  files: ['case-10.site.yaml', 'case-10-upstairs.site.yaml', 'case-10-after.site.yaml'],
  must: [
    {
      says: 'Long as it is, shack and service are one system.',
      ask: { together: ['shack-bar', 'foot-ground', 'main-panel'] },
    },
    {
      says: 'The drop of 15 ft, straight #6, comes to 7 uH.',
      ask: { way: ['shack-bar', 'foot-ground'], lengthM: [4.56, 4.58], inductanceH: [6.3e-6, 7.7e-6] },
    },
    {
      says: 'The 110 ft around come to 65 uH.',
      ask: { way: ['foot-ground', 'main-panel'], lengthM: [33.5, 33.6], inductanceH: [58.5e-6, 71.5e-6] },
    },
    { says: 'That far around is sub-optimum.', ask: { finding: 'bond-between-groups-long', at: 'around' } },
    {
      says: 'Arresters do not belong upstairs.',
      ask: { finding: 'discharge-unit-place', at: 'coax-arrester' },
      ofFile: 'case-10-upstairs.site.yaml',
    },
    {
      says: 'Single-point bus, its rods and the utilities are one system.',
      ask: { together: ['entry', 'entry-rods', 'coax-arrester', 'main-panel', 'shack-bar'] },
      ofFile: 'case-10-after.site.yaml',
    },
  ],
  mustNot: [
    { says: 'A long bond is a bond.', ask: { unbonded: 'foot-ground' } },
    { says: 'Nor does its length fail the clause.', ask: { finding: 'all-electrodes-one-system', at: 'foot-ground' } },
    {
      says: '#6 copper is the size asked for.',
      ask: { finding: 'antenna-electrode-bond-size', at: 'around' },
    },
    {
      says: 'The electrode of the service was not spoken of: it may not be called absent.',
      ask: { finding: 'service-electrode-known', at: 'main-panel' },
    },
    {
      says: 'An arrester on the bus outside is in its place.',
      ask: { finding: 'discharge-unit-place', at: 'coax-arrester' },
      ofFile: 'case-10-after.site.yaml',
    },
    {
      says: 'The bus reaches the service.',
      ask: { finding: 'panel-tied-to-service', at: 'entry' },
      ofFile: 'case-10-after.site.yaml',
    },
    {
      says: 'Three rods are no lone rod.',
      ask: { finding: 'single-rod-25-ohm', at: 'entry-rods' },
      ofFile: 'case-10-after.site.yaml',
    },
    {
      says: 'How far the rods stand from each other was not told.',
      ask: { finding: 'rod-spacing-minimum', at: 'entry-rods' },
      ofFile: 'case-10-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'An entry panel at ground level is required.',
      because: 'proposals of works come later; the variant with it stands above',
    },
    {
      sentence: 'Accept that the drop is inductive and stop the surge below.',
      because: 'needs the strike calculation',
    },
  ],
};
