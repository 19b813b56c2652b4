import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-33',
  title: 'Bedrock at 6 inches, base cast on top of the rock',
  sources: ['http://lists.contesting.com/archives/html/Towertalk/2007-01/msg00531.html'],
  grade: 'A',
  files: ['case-33.site.yaml', 'case-33-runs.site.yaml'],
  must: [
    {
      says: 'A strap laid on rock is an electrode: tower and straps are one system.',
      ask: { together: ['tower', 'strap-1', 'strap-2'] },
    },
    {
      says: 'What the arresters are bonded to was not told.',
      ask: { finding: 'arrester-bonded', at: 'arrester-1', outcome: 'cannot tell' },
    },
    {
      says: 'Nor where the service is.',
      ask: { finding: 'service-electrode-known', outcome: 'cannot tell' },
    },
    {
      says: '50 ft of 2 in strap, by the formula of the case, comes to 21 uH.',
      ask: { way: ['tower', 'strap-end'], lengthM: [15.2, 15.3], inductanceH: [18.9e-6, 23.1e-6] },
      ofFile: 'case-33-runs.site.yaml',
    },
    {
      says: '50 ft of #6 comes to 27 uH: a fifth more, no more than that.',
      ask: { way: ['tower', 'wire-end'], lengthM: [15.2, 15.3], inductanceH: [24.3e-6, 29.7e-6] },
      ofFile: 'case-33-runs.site.yaml',
    },
  ],
  mustNot: [
    { says: 'The tower is grounded, without a rod.', ask: { finding: 'mast-grounded', at: 'tower' } },
    { says: 'No limit for rods falls on a strap.', ask: { finding: 'single-rod-25-ohm', at: 'strap-1' } },
    { says: 'Nor the length of a rod.', ask: { finding: 'rod-length-us', at: 'strap-1' } },
    {
      says: 'An arrester that gave its life was not found floating.',
      ask: { finding: 'arrester-bonded', at: 'arrester-1' },
    },
    {
      says: 'Each feed line had one.',
      ask: { finding: 'arrester-on-every-feed-line', at: 'coax-1' },
    },
    {
      says: 'Where the shields are bonded on the way in was not told.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax-1' },
    },
    {
      says: 'The straps are one earth, not two.',
      ask: { finding: 'all-electrodes-one-system', at: 'strap-2' },
    },
  ],
  notYet: [
    {
      sentence: 'What a strap gains is contact area, not inductance.',
      because: 'the resistivity of soil and rock was not told',
    },
    {
      sentence: 'A block and bars in rock are no electrode.',
      because: 'the base is typed in words; nothing asks for the absence of an electrode',
    },
    {
      sentence: 'One direct hit, two coax arresters lost and nothing else.',
      because: 'needs the strike calculation',
    },
  ],
};
