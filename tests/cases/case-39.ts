import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-39',
  title: 'Frost: four to five feet, gas and mains in the way',
  sources: [
    'http://lists.contesting.com/_towertalk/1998-06/msg00348.html',
    'http://lists.contesting.com/_towertalk/1998-06/msg00342.html',
  ],
  grade: 'B',
  dissent:
    'How deep. Below the frost if possible: heave breaks copper and frozen soil hardly conducts. Against it: a shallow bond still equalises, and radials are never that deep. Agreed by both: a bond bonds, frozen or not.',
  files: ['case-39.site.yaml', 'case-39-shallow.site.yaml'],
  must: [
    {
      says: 'Perimeter and service are one system.',
      ask: { together: ['perimeter', 'main-panel'] },
    },
    {
      says: 'They stay so in winter.',
      ask: { together: ['perimeter', 'main-panel'] },
      inState: 'winter',
    },
    {
      says: 'A bond above the frost line still bonds.',
      ask: { together: ['perimeter', 'main-panel'] },
      ofFile: 'case-39-shallow.site.yaml',
      inState: 'winter',
    },
    {
      says: 'Whether the gas pipe is bonded was not told.',
      ask: { finding: 'metalwork-bonded', at: 'gas', outcome: 'cannot tell' },
    },
    { says: 'How deep the conductor lies is still open.', ask: { unknownAt: /perimeter/ } },
  ],
  mustNot: [
    {
      says: 'Frost undoes no bond.',
      ask: { finding: 'all-electrodes-one-system', at: 'perimeter' },
      ofFile: 'case-39-shallow.site.yaml',
      inState: 'winter',
    },
    {
      says: 'Nor does it take the electrode of the service away.',
      ask: { finding: 'service-electrode-known', at: 'main-panel' },
      ofFile: 'case-39-shallow.site.yaml',
      inState: 'winter',
    },
    {
      says: 'A pipe that crosses is not used as an electrode.',
      ask: { finding: 'gas-pipe-never-electrode', at: 'gas' },
    },
    { says: 'Crossing in the soil is no bond.', ask: { together: ['gas', 'perimeter'] } },
    {
      says: 'That the pipe is not bonded, nobody said.',
      ask: { finding: 'metalwork-bonded', at: 'gas' },
    },
    {
      says: 'Whether the perimeter closes was not told.',
      ask: { finding: 'ring-is-closed', at: 'perimeter' },
    },
  ],
  notYet: [
    {
      sentence: 'What lies above the frost line counts as nearly nothing in winter.',
      because: 'no resistivity was told, so no resistance of either season can be worked out',
    },
    {
      sentence: 'How far must the ring stay from gas and mains cables?',
      because: 'no rule gives a distance in soil between electrodes and pipes or cables',
    },
    { sentence: 'Heave breaks copper.', because: 'no rule speaks of frost' },
    {
      sentence: '5 ft of frost in another yard, 18 in elsewhere.',
      because: 'other sites, of which no more was told',
    },
  ],
};
