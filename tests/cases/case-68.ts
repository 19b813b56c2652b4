import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-68',
  title: 'Where does the code stop?',
  sources: ['https://satelliteguys.us/xen/threads/maximum-bonding-distance-between-two-electrodes.32438/latest'],
  grade: 'C',
  files: ['case-68.site.yaml', 'case-68-without.site.yaml'],
  must: [
    {
      says: 'By the code it passes: block, rod and service rod are one system.',
      ask: { together: ['ground-block', 'antenna-rod', 'service-rod'] },
    },
    {
      says: 'The size of the bond passes too.',
      ask: { finding: 'antenna-electrode-bond-size', at: 'rod-bond', outcome: 'met' },
    },
    {
      says: '60 ft of #6 come to about 33 uH (10 % either way).',
      ask: { way: ['antenna-rod', 'service-rod'], lengthM: [16.5, 20.1], inductanceH: [29.7e-6, 36.4e-6] },
    },
    {
      says: 'For a strike that is long: an advice beside the code, not merged with it.',
      ask: { finding: 'bond-between-groups-long', at: 'rod-bond', severity: 'advice' },
    },
    {
      says: 'The bond is required: without it the rod of the antenna is apart.',
      ask: { finding: 'all-electrodes-one-system', at: 'antenna-rod' },
      ofFile: 'case-68-without.site.yaml',
    },
    {
      says: 'Without it the rod does not reach the service.',
      ask: { unbonded: 'antenna-rod' },
      ofFile: 'case-68-without.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'The code gives no greatest length: no clause is broken by 60 ft.',
      ask: { finding: 'all-electrodes-one-system', at: 'antenna-rod' },
    },
    {
      says: 'A long bond of the right size is not one of the wrong size.',
      ask: { finding: 'antenna-electrode-bond-size', at: 'rod-bond' },
    },
    {
      says: 'The length is not a defect.',
      ask: { finding: 'bond-between-groups-long', at: 'rod-bond', severity: 'defect' },
    },
    { says: 'And a bonded rod is not unbonded.', ask: { unbonded: 'antenna-rod' } },
    { says: 'An 8 ft rod is long enough.', ask: { finding: 'rod-length-us', at: 'antenna-rod' } },
    {
      says: 'The two rods are bonded, so neither is a lone rod.',
      ask: { finding: 'single-rod-25-ohm', at: 'antenna-rod' },
    },
  ],
  notYet: [
    {
      sentence: 'Two verdict columns, code and strike, with a number in the strike column.',
      because: 'needs the strike calculation; report wording',
    },
  ],
};
