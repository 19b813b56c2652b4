import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-64',
  title: '35 ft tower, cable unplugged outside but not grounded, rod under the desk (Australia)',
  sources: ['http://lists.contesting.com/_towertalk/2002-07/msg00666.html'],
  grade: 'A',
  files: ['case-64.site.yaml', 'case-64-after.site.yaml'],
  must: [
    { says: 'The entry plate floats.', ask: { finding: 'panel-tied-to-service', at: 'plate' } },
    {
      says: 'The rod of the shack is tied to nothing but the switch.',
      ask: { finding: 'all-electrodes-one-system', at: 'shack-rod' },
    },
    { says: 'Tower and shack rod are two earths.', ask: { apart: ['tower-earth', 'shack-rod'] } },
    { says: 'The plate is on neither.', ask: { apart: ['plate', 'shack-rod'] } },
    {
      says: 'The ground lead of the tower has a right-angle bend.',
      ask: { way: ['tower', 'tower-earth'], bendsDeg: [89, 91] },
    },
    {
      says: 'Unplugged and loose at a gap of 10 mm is not open for a strike.',
      ask: { finding: 'spare-and-disconnected-lines', at: 'hf-line' },
      inState: 'storm',
    },
    {
      says: 'The same for the other line.',
      ask: { finding: 'spare-and-disconnected-lines', at: 'vhf-line' },
      inState: 'storm',
    },
    {
      says: 'With a rod below the plate tied to all grounds, all of it is one.',
      ask: { together: ['plate', 'plate-rod', 'tower-earth', 'tower', 'shack-rod'] },
      ofFile: 'case-64-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'A floating plate is severe, not a suggestion.',
      ask: { finding: 'panel-tied-to-service', at: 'plate', severity: 'advice' },
    },
    {
      says: 'So is a rod by itself.',
      ask: { finding: 'all-electrodes-one-system', at: 'shack-rod', severity: 'advice' },
    },
    {
      says: 'Shields on the plate are no bond of it.',
      ask: { together: ['plate', 'coax-switch'] },
    },
    { says: 'The tower has its lead.', ask: { finding: 'mast-grounded', at: 'tower' } },
    {
      says: 'The radius of the bend was not told: it may not be called too tight.',
      ask: { finding: 'bend-radius', at: 'tower-lead' },
    },
    {
      says: 'With all grounds tied the rod under the desk is not reported as apart.',
      ask: { finding: 'all-electrodes-one-system', at: 'shack-rod' },
      ofFile: 'case-64-after.site.yaml',
    },
    {
      says: 'A cable that is pulled and grounded is not found wanting.',
      ask: { finding: 'spare-and-disconnected-lines', at: 'hf-line' },
      inState: 'storm',
      ofFile: 'case-64-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Short or ground the centre conductors when unplugged.',
      because: 'the end of a pulled line is typed as one; its core is not told apart from its shield',
    },
    {
      sentence: 'The switch burned at the ground stud; plug and socket melted together.',
      because: 'needs the strike calculation',
    },
  ],
};
