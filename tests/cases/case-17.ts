import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-17',
  title: 'Roof-mounted multi-band vertical',
  sources: ['http://lists.contesting.com/pipermail/towertalk/2000-February/029134.html'],
  grade: 'A',
  files: ['case-17.site.yaml', 'case-17-elsewhere.site.yaml', 'case-17-crossing.site.yaml'],
  must: [
    {
      says: 'The conductor of the mast runs straight to the rod of the service.',
      ask: { together: ['mast', 'service-rod'] },
    },
    {
      says: 'Where the shield is bonded and the arrester goes has still to be said.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax', outcome: 'cannot tell' },
    },
    {
      says: 'Elsewhere: second conductor, rod, buried tie: one system.',
      ask: { together: ['mast', 'entry-rod', 'coax-arrester', 'service-rod'] },
      ofFile: 'case-17-elsewhere.site.yaml',
    },
    {
      says: 'Mast to service has then two ways with nothing in common.',
      ask: { way: ['mast', 'service-rod'], separatePaths: 2 },
      ofFile: 'case-17-elsewhere.site.yaml',
    },
    {
      says: 'An entry that makes the tie cross the basement is to be avoided.',
      ask: { finding: 'no-lightning-path-through-building', at: 'rod-tie' },
      ofFile: 'case-17-crossing.site.yaml',
    },
  ],
  mustNot: [
    { says: 'The mast is grounded at the service.', ask: { finding: 'mast-grounded', at: 'mast' } },
    {
      says: 'Its ground is the service itself.',
      ask: { finding: 'antenna-rod-is-not-a-substitute', at: 'mast' },
    },
    {
      says: 'The conductor runs down outside.',
      ask: { finding: 'no-lightning-path-through-building', at: 'mast-lead' },
    },
    {
      says: 'A rod below the entry, bonded, is not reported as apart.',
      ask: { unbonded: 'entry-rod' },
      ofFile: 'case-17-elsewhere.site.yaml',
    },
    {
      says: '#4 copper is large enough for the tie.',
      ask: { finding: 'antenna-electrode-bond-size', at: 'rod-tie' },
      ofFile: 'case-17-elsewhere.site.yaml',
    },
    {
      says: 'A buried tie outside is no path through the building.',
      ask: { finding: 'no-lightning-path-through-building', at: 'rod-tie' },
      ofFile: 'case-17-elsewhere.site.yaml',
    },
    {
      says: 'The arrester sits outside, where the coax leaves the conductor.',
      ask: { finding: 'discharge-unit-place', at: 'coax-arrester' },
      ofFile: 'case-17-elsewhere.site.yaml',
    },
    {
      says: 'And the shield is bonded there.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax' },
      ofFile: 'case-17-elsewhere.site.yaml',
    },
    {
      says: 'Through the basement it is still a bond.',
      ask: { unbonded: 'entry-rod' },
      ofFile: 'case-17-crossing.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Compare the two layouts.',
      because: 'a claim asks one layout at a time; comparing two comes later',
    },
    { sentence: 'By the shortest path.', because: 'no lengths were told; needs positions' },
  ],
};
