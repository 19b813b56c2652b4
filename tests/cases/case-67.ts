import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-67',
  title: 'Pool shell as tower ground',
  sources: ['http://lists.contesting.com/_cq-contest/1995-08/msg00138.html'],
  grade: 'A',
  files: ['case-67.site.yaml', 'case-67-near.site.yaml', 'case-67-far.site.yaml'],
  must: [
    {
      says: 'A pool shell is not to be the electrode of a tower: on the shell alone it cannot be told to be grounded.',
      ask: { finding: 'mast-grounded', at: 'tower', outcome: 'cannot tell' },
    },
    {
      says: 'A tower within 5 ft of the water and not on the grid of the pool is in another group.',
      ask: { apart: ['tower', 'pool'] },
      ofFile: 'case-67-near.site.yaml',
    },
    {
      says: 'Both can be touched at once: metal within 5 ft of the water has to be on the grid.',
      ask: { finding: 'shelters-within-reach-bonded', at: 'tower', severity: 'hazard' },
      ofFile: 'case-67-near.site.yaml',
    },
    {
      says: 'Within 5 ft of the water it is to be in the bond of the pool.',
      ask: { finding: 'pool-fixed-metal-bonded', at: 'tower', severity: 'hazard' },
      ofFile: 'case-67-near.site.yaml',
    },
    {
      says: 'Farther off the common system ties them, and no more is asked.',
      ask: { together: ['tower', 'tower-rod', 'main-panel', 'pool'] },
      ofFile: 'case-67-far.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'The shell does not make it a grounded tower.',
      ask: { finding: 'mast-grounded', at: 'tower', outcome: 'met' },
    },
    {
      says: 'Of other electrodes nothing was told: the tower may not be called ungrounded either.',
      ask: { finding: 'mast-grounded', at: 'tower' },
    },
    {
      says: 'Over 5 ft from the water no tie is asked beyond the common system.',
      ask: { finding: 'shelters-within-reach-bonded', at: 'tower' },
      ofFile: 'case-67-far.site.yaml',
    },
    {
      says: 'Nor is its bond asked for there.',
      ask: { finding: 'pool-fixed-metal-bonded', at: 'tower' },
      ofFile: 'case-67-far.site.yaml',
    },
    {
      says: 'Nor is the pool reported as unbonded there.',
      ask: { finding: 'metalwork-bonded', at: 'pool' },
      ofFile: 'case-67-far.site.yaml',
    },
    {
      says: 'A pool out of reach is no reason to call the rod apart.',
      ask: { unbonded: 'tower-rod' },
      ofFile: 'case-67-far.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Do not use the shell as the electrode for a strike.',
      because: 'no rule names a pool as an electrode that may not be; a shell that is not typed as one is not counted',
    },
  ],
};
