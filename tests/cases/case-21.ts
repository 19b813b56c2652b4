import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-21',
  title: 'Antenna on a workshop 60 ft from the house',
  sources: ['https://forum.tvfool.com/showthread.php?t=15190'],
  grade: 'C',
  files: ['case-21.site.yaml', 'case-21-after.site.yaml'],
  must: [
    {
      says: 'A second building without an electrode.',
      ask: { finding: 'separate-building-electrode', at: 'shop-panel' },
    },
    { says: 'The mast on it has no ground.', ask: { finding: 'mast-grounded', at: 'mast' } },
    {
      says: 'The coax needs a bond where it comes into the house.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax' },
    },
    {
      says: 'It goes in with nothing on its core.',
      ask: { crossesUnprotected: 'coax', building: 'house' },
    },
    {
      says: 'Electrode, panel and mast of the shop are one system.',
      ask: { together: ['mast', 'shop-ground', 'shop-panel'] },
      ofFile: 'case-21-after.site.yaml',
    },
    {
      says: 'The entry at the house is tied to its service.',
      ask: { together: ['house-entry', 'main-panel'] },
      ofFile: 'case-21-after.site.yaml',
    },
  ],
  mustNot: [
    { says: 'The shield does not join the two buildings.', ask: { together: ['mast', 'main-panel'] } },
    {
      says: 'The building with the service is no second building.',
      ask: { finding: 'separate-building-electrode', at: 'main-panel' },
    },
    {
      says: 'The electrode of the house was not spoken of: it may not be called absent.',
      ask: { finding: 'service-electrode-known', at: 'main-panel' },
    },
    {
      says: 'Whether the neutral is bonded at the shop was not told.',
      ask: { finding: 'neutral-bonded-once', at: 'shop-panel' },
    },
    {
      says: 'With its electrode the shop is not found wanting.',
      ask: { finding: 'separate-building-electrode', at: 'shop-panel' },
      ofFile: 'case-21-after.site.yaml',
    },
    { says: 'Nor the mast.', ask: { finding: 'mast-grounded', at: 'mast' }, ofFile: 'case-21-after.site.yaml' },
    {
      says: 'Nor the entry of the coax.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax' },
      ofFile: 'case-21-after.site.yaml',
    },
    {
      says: 'Bonding the shield leaves the core as it was.',
      ask: { finding: 'arrester-on-every-feed-line', at: 'coax', outcome: 'met' },
      ofFile: 'case-21-after.site.yaml',
    },
  ],
  notYet: [{ sentence: 'Fibre between the buildings if it is for data.', because: 'proposals of works come later' }],
};
