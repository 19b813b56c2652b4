import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-56',
  title: 'Several county sites, generators killed',
  sources: ['https://forums.radioreference.com/threads/what-else-in-the-fine-print-have-we-not-found-yet.300575'],
  grade: 'A',
  files: ['case-56.site.yaml', 'case-56-apart.site.yaml', 'case-56-after.site.yaml'],
  must: [
    {
      says: 'The grounding design is unknown: whether the generator is tied to anything cannot be told.',
      ask: { finding: 'no-orphan-equipment', at: 'generator', outcome: 'cannot tell' },
    },
    {
      says: 'Nor whether the fuel tank is bonded.',
      ask: { finding: 'metalwork-bonded', at: 'fuel-tank', outcome: 'cannot tell' },
    },
    {
      says: 'A generator must be on the site ground: one that is tied to nothing is found.',
      ask: { finding: 'no-orphan-equipment', at: 'generator' },
      ofFile: 'case-56-apart.site.yaml',
    },
    {
      says: 'It is not in the group of the service.',
      ask: { apart: ['generator', 'main-panel'] },
      ofFile: 'case-56-apart.site.yaml',
    },
    {
      says: 'So must the fuel tank.',
      ask: { finding: 'metalwork-bonded', at: 'fuel-tank' },
      ofFile: 'case-56-apart.site.yaml',
    },
    {
      says: 'A surge protector at the panel.',
      ask: { finding: 'service-surge-protector', at: 'main-panel' },
      ofFile: 'case-56-apart.site.yaml',
    },
    {
      says: 'A protector on the telephone line.',
      ask: { finding: 'arrester-on-every-control-line', at: 'phone' },
      ofFile: 'case-56-apart.site.yaml',
    },
    {
      says: 'A bond between tower and shelter.',
      ask: { finding: 'all-electrodes-one-system', at: 'tower-earth' },
      ofFile: 'case-56-apart.site.yaml',
    },
    {
      says: 'On the ring all of it is one.',
      ask: { together: ['generator', 'fuel-tank', 'tower', 'tower-earth', 'site-ring', 'main-panel'] },
      ofFile: 'case-56-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'Unknown grounding is not absent grounding.',
      ask: { finding: 'no-orphan-equipment', at: 'generator' },
    },
    { says: 'The same for the tank.', ask: { finding: 'metalwork-bonded', at: 'fuel-tank' } },
    { says: 'The same for the tower.', ask: { finding: 'mast-grounded', at: 'tower' } },
    {
      says: 'On the ring the generator is not found wanting.',
      ask: { finding: 'no-orphan-equipment', at: 'generator' },
      ofFile: 'case-56-after.site.yaml',
    },
    {
      says: 'Nor the tank.',
      ask: { finding: 'metalwork-bonded', at: 'fuel-tank' },
      ofFile: 'case-56-after.site.yaml',
    },
    {
      says: 'Nor the panel.',
      ask: { finding: 'service-surge-protector', at: 'main-panel' },
      ofFile: 'case-56-after.site.yaml',
    },
    {
      says: 'Nor the telephone.',
      ask: { finding: 'arrester-on-every-control-line', at: 'phone' },
      ofFile: 'case-56-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Repeated damage at several sites is one design flaw; the same finding at many sites in one view.',
      because: 'a file is one site and nothing reads several',
    },
  ],
};
