import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-32',
  title: 'Dry limestone hilltop, rods useless (5 Mohm between two)',
  sources: [
    'http://lists.contesting.com/_towertalk/2005-08/msg00052.html',
    'http://lists.contesting.com/_towertalk/2005-08/msg00063.html',
    'http://lists.contesting.com/archives/html/towertalk/2005-08/msg00060.html',
  ],
  grade: 'A',
  files: ['case-32.site.yaml', 'case-32-rods.site.yaml', 'case-32-after.site.yaml'],
  must: [
    {
      says: 'No rod, no buried copper: the tower has no ground that anybody made.',
      ask: { finding: 'mast-grounded', at: 'tower' },
    },
    { says: 'Nor has the first of the short ones.', ask: { finding: 'mast-grounded', at: 'short-tower-1' } },
    { says: 'Nor the second.', ask: { finding: 'mast-grounded', at: 'short-tower-2' } },
    {
      says: 'The steel in the concrete of the house is the electrode of the service.',
      ask: { together: ['house-steel', 'main-panel'] },
    },
    {
      says: 'What ties the plate was not told.',
      ask: { finding: 'panel-tied-to-service', at: 'cable-plate', outcome: 'cannot tell' },
    },
    {
      says: 'Two feet of rod is a quarter of what the clause asks.',
      ask: { finding: 'rod-length-us', at: 'receive-rod-1' },
    },
    {
      says: 'A rod of megohms is a figure like any other.',
      ask: { earthOhm: 'receive-rod-1', within: [2.25e6, 2.75e6] },
      ofFile: 'case-32-rods.site.yaml',
    },
    {
      says: 'Unplugged at the plate, the feed line no longer reaches the radio.',
      ask: { reachesNot: ['radio', 'coax'], state: 'unplugged' },
    },
    {
      says: 'Where the pulled end lies was not told.',
      ask: { finding: 'spare-and-disconnected-lines', at: 'coax', outcome: 'cannot tell' },
      inState: 'unplugged',
    },
    {
      says: 'As agreed, tower, steel of its base and straps are one system.',
      ask: { together: ['tower', 'base-steel', 'strap-1', 'strap-2', 'strap-3'] },
      ofFile: 'case-32-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'Steel in concrete is no lone rod.',
      ask: { finding: 'single-rod-25-ohm', at: 'house-steel' },
    },
    {
      says: 'The service has its electrode.',
      ask: { finding: 'service-electrode-known', at: 'main-panel' },
    },
    {
      says: "The coil under the pole is the utility's.",
      ask: { finding: 'all-electrodes-one-system', at: 'pole-coil' },
    },
    { says: 'Nor is it reported as unbonded.', ask: { unbonded: 'pole-coil' } },
    {
      says: 'A reading through rock is no bond.',
      ask: { together: ['receive-rod-1', 'receive-rod-2'] },
    },
    {
      says: 'Whether the rods of the receive wire are tied in was not told.',
      ask: { finding: 'all-electrodes-one-system', at: 'receive-rod-1' },
    },
    {
      says: 'A concrete block is no electrode by itself.',
      ask: { finding: 'mast-grounded', at: 'tower', outcome: 'met' },
    },
    {
      says: 'On straps and base steel the tower is grounded without a rod.',
      ask: { finding: 'mast-grounded', at: 'tower' },
      ofFile: 'case-32-after.site.yaml',
    },
    {
      says: 'No limit for rods falls on a strap.',
      ask: { finding: 'single-rod-25-ohm', at: 'strap-1' },
      ofFile: 'case-32-after.site.yaml',
    },
    {
      says: 'Nor the length of a rod.',
      ask: { finding: 'rod-length-us', at: 'strap-1' },
      ofFile: 'case-32-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'A limit in ohms must not force rods that cannot work: propose straps and bonded base steel.',
      because: 'proposals of works come later',
    },
    { sentence: 'Each strap under 75 ft.', because: 'no rule limits the length of a strap' },
    {
      sentence: 'All cables, not the feed line alone, lie on the surface to the plate.',
      because: 'which they are was not told; one feed line is typed for all',
    },
  ],
};
