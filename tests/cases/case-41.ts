import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-41',
  title: 'Monthly outages to none: rods into the water table',
  sources: ['https://www.engineeringradio.us/blog/tag/lightning/page/3/'],
  grade: 'A',
  files: ['case-41.site.yaml', 'case-41-after.site.yaml'],
  must: [
    {
      says: 'Before: whether the transmitter is tied to anything was not told.',
      ask: { finding: 'no-orphan-equipment', at: 'transmitter', outcome: 'cannot tell' },
    },
    {
      says: 'Nor what grounds the service.',
      ask: { finding: 'service-electrode-known', outcome: 'cannot tell' },
    },
    {
      says: 'After: transmitter, single point and rods are one system.',
      ask: { together: ['transmitter', 'bus', 'deep-rods'] },
      ofFile: 'case-41-after.site.yaml',
    },
    {
      says: 'An exothermic joint at the rods is an allowed one.',
      ask: { finding: 'joint-method-allowed', at: 'bus-lead:to', outcome: 'met' },
      ofFile: 'case-41-after.site.yaml',
    },
    {
      says: 'Rods of 20 ft are long enough.',
      ask: { finding: 'rod-length-us', at: 'deep-rods', outcome: 'met' },
      ofFile: 'case-41-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'Not told is not absent.',
      ask: { finding: 'no-orphan-equipment', at: 'transmitter' },
    },
    {
      says: 'Of electrodes nothing was told: none may be found wanting.',
      ask: { finding: 'all-electrodes-one-system' },
    },
    {
      says: 'After: the transmitter is on the bus.',
      ask: { finding: 'no-orphan-equipment', at: 'transmitter' },
      ofFile: 'case-41-after.site.yaml',
    },
    {
      says: 'No joint depends on solder.',
      ask: { finding: 'no-solder-in-path', at: 'bus-lead:to' },
      ofFile: 'case-41-after.site.yaml',
    },
    {
      says: 'Rods on one bus are one earth.',
      ask: { finding: 'all-electrodes-one-system', at: 'deep-rods' },
      ofFile: 'case-41-after.site.yaml',
    },
    {
      says: 'Several rods are no lone rod.',
      ask: { finding: 'single-rod-25-ohm', at: 'deep-rods' },
      ofFile: 'case-41-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'A page of before and after, with what came of it.',
      because: 'comparing two layouts and the outcome field of the report come later',
    },
    {
      sentence: 'Rods down to the water table.',
      because: 'its depth and the resistivities were not told; needs soil fitting',
    },
  ],
};
