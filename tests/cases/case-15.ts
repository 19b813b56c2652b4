import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-15',
  title: '130 ft tower, 27 + 12 rods, and still a question',
  sources: ['http://lists.contesting.com/archives/html/Towertalk/2004-01/msg00359.html'],
  grade: 'A',
  files: ['case-15.site.yaml', 'case-15-after.site.yaml'],
  must: [
    {
      says: 'The missing piece is surge protection at the service.',
      ask: { finding: 'service-surge-protector', at: 'main-panel' },
    },
    {
      says: 'The telephone has a ground of its own.',
      ask: { finding: 'all-electrodes-one-system', at: 'phone-ground' },
    },
    { says: 'It does not reach the service.', ask: { unbonded: 'phone-ground' } },
    { says: 'Its protector is not on the common bar.', ask: { apart: ['phone-block', 'window'] } },
    {
      says: 'Tower, ground window and service are one system.',
      ask: { together: ['tower', 'tower-rods', 'window', 'window-rods', 'main-panel'] },
    },
    {
      says: 'Rods alone are not rewarded: what is missing comes first.',
      ask: { first: ['all-electrodes-one-system', 'service-surge-protector'], among: 2 },
    },
    {
      says: 'At one point, telephone, radio and power are one system.',
      ask: { together: ['phone-block', 'window', 'tower-rods', 'main-panel'] },
      ofFile: 'case-15-after.site.yaml',
    },
  ],
  mustNot: [
    { says: 'The rods of the tower pass.', ask: { finding: 'all-electrodes-one-system', at: 'tower-rods' } },
    { says: 'So do those of the ground window.', ask: { unbonded: 'window-rods' } },
    { says: 'Twenty-seven rods are no lone rod.', ask: { finding: 'single-rod-25-ohm', at: 'tower-rods' } },
    {
      says: 'How far they stand from each other was not told.',
      ask: { finding: 'rod-spacing-minimum', at: 'tower-rods' },
    },
    { says: "The rod at the transformer pole is the utility's.", ask: { unbonded: 'pole-rod' } },
    {
      says: 'Nor is it measured as one of the owner.',
      ask: { finding: 'all-electrodes-one-system', at: 'pole-rod' },
    },
    {
      says: 'The service reaches its electrodes.',
      ask: { finding: 'service-electrode-known', at: 'main-panel' },
    },
    {
      says: 'With the protector the finding is gone.',
      ask: { finding: 'service-surge-protector', at: 'main-panel' },
      ofFile: 'case-15-after.site.yaml',
    },
    {
      says: 'On the bar, the telephone protector is bonded.',
      ask: { finding: 'arrester-bonded', at: 'phone-block' },
      ofFile: 'case-15-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'The 200 ft of mains underground bring surges in.',
      because: 'needs the strike calculation with the world outside the site',
    },
  ],
};
