import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-65',
  title: 'Cables leave the tower in the air',
  sources: [
    'http://lists.contesting.com/_towertalk/2008-02/msg00382.html',
    'http://lists.contesting.com/pipermail/towertalk/2008-February/099509.html',
    'http://lists.contesting.com/pipermail/towertalk/2008-September/103894.html',
  ],
  grade: 'A',
  files: ['case-65.site.yaml', 'case-65-low.site.yaml', 'case-65-conduit.site.yaml'],
  must: [
    {
      says: 'A line that leaves at 15 ft leaves too high.',
      ask: { finding: 'line-goes-down-before-in', at: 'feed' },
    },
    {
      says: 'The tower below the exit: 15 ft of lattice come to about 3 uH (10 % either way).',
      ask: { way: ['tower@15 ft', 'tower@base'], lengthM: [4.11, 5.03], inductanceH: [2.7e-6, 3.3e-6] },
    },
    {
      says: 'Leaving at 1 ft is fine.',
      ask: { finding: 'line-goes-down-before-in', at: 'feed', outcome: 'met' },
      ofFile: 'case-65-low.site.yaml',
    },
    {
      says: 'So is a box at the base.',
      ask: { finding: 'line-goes-down-before-in', at: 'feed', outcome: 'met' },
      ofFile: 'case-65-conduit.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'At 15 ft it is not fine.',
      ask: { finding: 'line-goes-down-before-in', at: 'feed', outcome: 'met' },
    },
    {
      says: 'Nothing is to be said against 1 ft.',
      ask: { finding: 'line-goes-down-before-in', at: 'feed' },
      ofFile: 'case-65-low.site.yaml',
    },
    {
      says: 'Nor against the box at the base.',
      ask: { finding: 'line-goes-down-before-in', at: 'feed' },
      ofFile: 'case-65-conduit.site.yaml',
    },
    {
      says: 'Of electrodes nothing was told: the tower may not be called ungrounded.',
      ask: { finding: 'mast-grounded', at: 'tower' },
    },
    {
      says: 'What the straps go to was not told either.',
      ask: { finding: 'mast-grounded', at: 'tower' },
      ofFile: 'case-65-low.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'The tower below the exit drives current into the shields: 3 kV for each kA/us.',
      because: 'needs the strike calculation',
    },
  ],
};
