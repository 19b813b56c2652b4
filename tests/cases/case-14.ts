import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-14',
  title: '120 ft hard-line run: does the extra wire make a loop?',
  sources: ['http://lists.contesting.com/archives/html/Towertalk/2003-08/msg00263.html'],
  grade: 'A',
  files: ['case-14.site.yaml', 'case-14-wire.site.yaml'],
  must: [
    { says: 'Without the wire, tower and panel are two systems.', ask: { apart: ['tower-rods', 'entry'] } },
    {
      says: 'The shield must not be the only link.',
      ask: { finding: 'screens-not-sole-bond', at: 'tower-rods' },
    },
    { says: 'It is the shield that carries current between the two.', ask: { bridgedBy: 'hardline' } },
    {
      says: 'Panel, its rod and the service are one system.',
      ask: { together: ['entry', 'entry-rod', 'main-panel'] },
    },
    {
      says: 'A rod behind the desk brings the path into the room.',
      ask: { finding: 'no-lightning-path-through-building', at: 'desk-rod' },
    },
    { says: 'Whether that rod is tied to the others was not told.', ask: { perhapsUnbonded: 'desk-rod' } },
    {
      says: 'With the wire, tower, panel and service are one system.',
      ask: { together: ['tower-rods', 'entry', 'entry-rod', 'main-panel'] },
      ofFile: 'case-14-wire.site.yaml',
    },
    {
      says: '120 ft of #6, straight, comes to 71 uH.',
      ask: { way: ['tower-rods', 'entry'], lengthM: [36.5, 36.7], inductanceH: [64e-6, 78e-6] },
      ofFile: 'case-14-wire.site.yaml',
    },
  ],
  mustNot: [
    { says: 'A shield bonded at both ends is still no bond.', ask: { together: ['tower-rods', 'entry'] } },
    { says: 'The base of the tower has its rods.', ask: { finding: 'mast-grounded', at: 'tower' } },
    { says: 'An exothermic joint is a good one.', ask: { finding: 'joint-method-allowed', at: 'tower-lead:to' } },
    {
      says: 'The shield is bonded on the panel before it goes inside.',
      ask: { finding: 'shield-bonded-at-entry', at: 'hardline' },
    },
    {
      says: 'The line comes down to the base of the tower before it leaves.',
      ask: { finding: 'line-goes-down-before-in', at: 'hardline' },
    },
    {
      says: 'Whether jumpers cross the sliding sections was not told.',
      ask: { finding: 'mast-section-joints-bonded', at: 'tower' },
    },
    {
      says: 'With the wire the shield is not the sole bond.',
      ask: { finding: 'screens-not-sole-bond', at: 'tower-rods' },
      ofFile: 'case-14-wire.site.yaml',
    },
    {
      says: 'The wire does not break the single point: the rods of the tower are in.',
      ask: { finding: 'all-electrodes-one-system', at: 'tower-rods' },
      ofFile: 'case-14-wire.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Single point speaks of the equipment side; a wire beside the line makes no harmful loop.',
      because: 'report wording',
    },
  ],
};
