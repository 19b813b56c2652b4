import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-18',
  title: 'Side-mounted 40 ft tower on pipes in concrete',
  sources: ['https://mail-archive.com/repeater-builder@yahoogroups.com/msg55570.html'],
  grade: 'A',
  files: ['case-18.site.yaml', 'case-18-after.site.yaml'],
  must: [
    { says: 'The bond to the service is missing.', ask: { apart: ['tower', 'main-panel'] } },
    {
      says: 'A rod more is not the bond that matters.',
      ask: { finding: 'antenna-rod-is-not-a-substitute', at: 'tower' },
    },
    { says: 'Footing and rod stand apart from the service.', ask: { unbonded: 'footing' } },
    { says: 'The planned rod too.', ask: { finding: 'all-electrodes-one-system', at: 'plan-rod' } },
    { says: 'The footing already is an electrode of the tower.', ask: { together: ['tower', 'footing'] } },
    { says: 'A DC-grounded antenna is no arrester: the core has none.', ask: { coreUnprotected: 'coax' } },
    {
      says: 'It protects the antenna, not the radio.',
      ask: { finding: 'arrester-on-every-feed-line', at: 'coax' },
    },
    {
      says: 'Bonded, equipment, tower, footing and service are one system.',
      ask: { together: ['radio', 'tower', 'footing', 'main-panel'] },
      ofFile: 'case-18-after.site.yaml',
    },
    {
      says: 'The bond does not protect the core either.',
      ask: { coreUnprotected: 'coax' },
      ofFile: 'case-18-after.site.yaml',
    },
  ],
  mustNot: [
    { says: 'The footing grounds the tower, with or without a rod.', ask: { finding: 'mast-grounded', at: 'tower' } },
    {
      says: 'Without the rod all the more.',
      ask: { finding: 'mast-grounded', at: 'tower' },
      ofFile: 'case-18-after.site.yaml',
    },
    {
      says: 'A rod beside the footing is not a lone rod.',
      ask: { finding: 'single-rod-25-ohm', at: 'plan-rod' },
    },
    {
      says: '#8 is above the least size for the ground of a mast, in copper and in aluminium.',
      ask: { finding: 'mast-ground-size', at: 'rod-lead' },
    },
    {
      says: 'DC ground never counts as arrester.',
      ask: { finding: 'arrester-on-every-feed-line', at: 'coax', outcome: 'met' },
    },
    {
      says: 'Bonded, the footing is not reported as apart.',
      ask: { unbonded: 'footing' },
      ofFile: 'case-18-after.site.yaml',
    },
    {
      says: '#6 copper is the size asked for.',
      ask: { finding: 'antenna-electrode-bond-size', at: 'service-bond' },
      ofFile: 'case-18-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'The footing has far more area than a rod.',
      because: 'neither its size nor the soil was told, so no resistance follows',
    },
  ],
};
