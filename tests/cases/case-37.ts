import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-37',
  title: 'Ten-foot rod in dry sand: 750 ohm; 55 ft for 5 ohm',
  sources: ['http://lists.contesting.com/_towertalk/1997-04/msg00473.html'],
  grade: 'A',
  files: [
    'case-37.site.yaml',
    'case-37-deep.site.yaml',
    'case-37-uniform.site.yaml',
    'case-37-layers.site.yaml',
    'case-37-after.site.yaml',
    'case-37-readings.site.yaml',
  ],
  must: [
    {
      says: 'A lone rod of 750 ohm is thirty times over the figure of the clause.',
      ask: { finding: 'single-rod-25-ohm', at: 'first-rod' },
    },
    { says: 'A reading stands as read.', ask: { earthOhm: 'first-rod', within: [749, 751] } },
    { says: 'Lose the one rod and the tower is off earth.', ask: { weakPoint: 'first-rod', takesOff: ['tower'] } },
    {
      says: 'Driven to 55 ft the rod reads 5 ohm: a lone rod may stand.',
      ask: { finding: 'single-rod-25-ohm', at: 'deep-rod', outcome: 'met' },
      ofFile: 'case-37-deep.site.yaml',
    },
    {
      says: 'Uniform soil of 2,270 ohm m gives the first reading.',
      ask: { earthOhm: 'first-rod', within: [675, 825] },
      ofFile: 'case-37-uniform.site.yaml',
    },
    {
      says: 'And 173 ohm for the second.',
      ask: { earthOhm: 'deep-rod', within: [156, 190] },
      ofFile: 'case-37-uniform.site.yaml',
    },
    {
      says: 'With a break at 13.7 m and 15 ohm m below, the second reading comes out.',
      ask: { earthOhm: 'deep-rod', within: [4.5, 5.5] },
      ofFile: 'case-37-layers.site.yaml',
    },
    {
      says: 'And the first still does.',
      ask: { earthOhm: 'first-rod', within: [675, 825] },
      ofFile: 'case-37-layers.site.yaml',
    },
    {
      says: 'From the readings alone: no uniform soil fits both.',
      ask: { contradicted: 'deep-rod', says: /no uniform soil fits both 750 ohm at 10 ft .* and 5 ohm at 55 ft/i },
      ofFile: 'case-37-readings.site.yaml',
    },
    {
      says: 'Two layers do, with a boundary somewhere between 15 and 50 ft: 50 to 9 ohm m below it.',
      ask: { contradicted: 'deep-rod', says: /from 15 to 50 ft .*lower layer 5\d ohm m to (8\.\d|9(\.\d)?) ohm m/ },
      ofFile: 'case-37-readings.site.yaml',
    },
    {
      says: 'With the drop seen at 45 ft it is about 15 ohm m.',
      ask: { contradicted: 'deep-rod', says: /drop seen at 45 ft .*about 1[4-6] ohm m/ },
      ofFile: 'case-37-readings.site.yaml',
    },
    {
      says: 'Four deep rods and the tower are one system.',
      ask: { together: ['tower', 'tower-rod', 'out-1', 'out-2', 'out-3'] },
      ofFile: 'case-37-after.site.yaml',
    },
    {
      says: 'Each of the three stands 40 ft out.',
      ask: { way: ['tower-rod', 'out-1'], lengthM: [12.18, 12.2] },
      ofFile: 'case-37-after.site.yaml',
    },
    {
      says: 'The second as well.',
      ask: { way: ['tower-rod', 'out-2'], lengthM: [12.18, 12.2] },
      ofFile: 'case-37-after.site.yaml',
    },
    {
      says: 'And the third.',
      ask: { way: ['tower-rod', 'out-3'], lengthM: [12.18, 12.2] },
      ofFile: 'case-37-after.site.yaml',
    },
  ],
  mustNot: [
    { says: 'A 10 ft rod is long enough.', ask: { finding: 'rod-length-us', at: 'first-rod' } },
    { says: 'The tower has its rod, bad as it is.', ask: { finding: 'mast-grounded', at: 'tower' } },
    {
      says: 'Uniform soil does not fit: it never gives 5 ohm.',
      ask: { earthOhm: 'deep-rod', within: [4.5, 5.5] },
      ofFile: 'case-37-uniform.site.yaml',
    },
    {
      says: 'In layered soil the second rod no longer comes to 173 ohm.',
      ask: { earthOhm: 'deep-rod', within: [156, 190] },
      ofFile: 'case-37-layers.site.yaml',
    },
    {
      says: 'Readings that a uniform soil has contradict nothing.',
      ask: { contradicted: 'first-rod', says: /./ },
      ofFile: 'case-37-uniform.site.yaml',
    },
    {
      says: 'Four rods do not stand alone.',
      ask: { finding: 'single-rod-25-ohm', at: 'tower-rod' },
      ofFile: 'case-37-after.site.yaml',
    },
    {
      says: '4/0 is large enough.',
      ask: { finding: 'antenna-electrode-bond-size', at: 'run-1' },
      ofFile: 'case-37-after.site.yaml',
    },
    {
      says: 'Four rods on one wire are one earth.',
      ask: { finding: 'all-electrodes-one-system', at: 'out-3' },
      ofFile: 'case-37-after.site.yaml',
    },
  ],
  notYet: [],
};
