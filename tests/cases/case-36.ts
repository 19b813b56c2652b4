import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-36',
  title: 'Limestone hill: the "8 ft" rods were 4 ft',
  sources: ['http://lists.contesting.com/pipermail/towertalk/1997-April/004399.html'],
  grade: 'A',
  files: ['case-36.site.yaml', 'case-36-believed.site.yaml', 'case-36-soil.site.yaml', 'case-36-after.site.yaml'],
  must: [
    { says: 'The rod that was dug out is 4 ft.', ask: { finding: 'rod-length-us', at: 'rod-2' } },
    {
      says: 'Whether tower and power feed are tied was not told.',
      ask: { perhapsUnbonded: 'rod-1' },
    },
    {
      says: 'Tower and both rods are one system.',
      ask: { together: ['tower', 'rod-1', 'rod-2'] },
    },
    {
      says: 'What grounds the power feed is in doubt.',
      ask: { finding: 'service-electrode-known', at: 'breaker-box', outcome: 'cannot tell' },
    },
    {
      says: 'An 8 ft rod in 100 ohm m comes to 40 ohm.',
      ask: { earthOhm: 'long-rod', within: [36, 44] },
      ofFile: 'case-36-soil.site.yaml',
    },
    {
      says: 'Half the rod has 1.8 times the resistance.',
      ask: { earthOhm: 'short-rod', within: [64, 79] },
      ofFile: 'case-36-soil.site.yaml',
    },
    {
      says: 'After the fix, tower and all four holes are one system.',
      ask: { together: ['tower', 'hole-1', 'hole-2', 'hole-3', 'hole-4'] },
      ofFile: 'case-36-after.site.yaml',
    },
    {
      says: 'The breaker box has its way back to the transformer pole.',
      ask: { way: ['breaker-box', 'pole-ground'] },
      ofFile: 'case-36-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'The other rod is 8 ft as far as anybody knows.',
      ask: { finding: 'rod-length-us', at: 'rod-1' },
    },
    {
      says: 'As believed, neither rod was short.',
      ask: { finding: 'rod-length-us', at: 'rod-2' },
      ofFile: 'case-36-believed.site.yaml',
    },
    { says: 'The tower has its rods.', ask: { finding: 'mast-grounded', at: 'tower' } },
    { says: '#8 copper is large enough for a mast.', ask: { finding: 'mast-ground-size', at: 'tower-lead' } },
    {
      says: 'A tie nobody spoke of is not an absent tie.',
      ask: { unbonded: 'rod-1' },
    },
    {
      says: 'A welded joint is no soldered one.',
      ask: { finding: 'no-solder-in-path', at: 'tower-lead:from' },
    },
    {
      says: 'An exothermic joint is an allowed one.',
      ask: { finding: 'joint-method-allowed', at: 'lead-1:to' },
      ofFile: 'case-36-after.site.yaml',
    },
    {
      says: 'How long the rods in the holes are was not told.',
      ask: { finding: 'rod-length-us', at: 'hole-1' },
      ofFile: 'case-36-after.site.yaml',
    },
    {
      says: 'The pole is grounded by the utility.',
      ask: { finding: 'all-electrodes-one-system', at: 'pole-ground' },
      ofFile: 'case-36-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'What is claimed and what is verified, per electrode.',
      because: 'typed as told and measured; no question asks how a field is known',
    },
    {
      sentence: 'Compare before and after.',
      because: 'a claim asks one layout at a time; comparing two comes later',
    },
    {
      sentence: 'Repeater, antenna and controller were replaced twice in 30 days.',
      because: 'needs the strike calculation',
    },
  ],
};
