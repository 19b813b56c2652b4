import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-27',
  title: 'Owner had disconnected all but the ground wire',
  sources: ['https://070club.groups.io/g/main/message/55129'],
  grade: 'A',
  files: ['case-27.site.yaml', 'case-27-rod.site.yaml'],
  must: [
    {
      says: 'Floating except for the ground wire: the wire still reaches the radio.',
      ask: { reaches: ['radio', 'ground-wire'], state: 'storm' },
    },
    { says: 'The coax does not.', ask: { reachesNot: ['radio', 'coax'], state: 'storm' } },
    { says: 'Nor the supply.', ask: { reachesNot: ['radio', 'dc-lead'], state: 'storm' } },
    {
      says: 'The garage opener keeps its mains.',
      ask: { reaches: ['garage-opener', 'opener-circuit'], state: 'storm' },
    },
    { says: 'The telephones keep their line.', ask: { reaches: ['telephones', 'phone'], state: 'storm' } },
    { says: 'Where the ground wire goes was not told: it is asked.', ask: { unknownAt: /ground-wire/ } },
    {
      says: 'Where the pulled coax hangs was not told.',
      ask: { finding: 'spare-and-disconnected-lines', at: 'coax', outcome: 'cannot tell' },
      inState: 'storm',
    },
    {
      says: 'On a rod of its own, pulling all the rest does not clear the finding.',
      ask: { finding: 'all-electrodes-one-system', at: 'own-rod', severity: 'hazard' },
      ofFile: 'case-27-rod.site.yaml',
      inState: 'storm',
    },
    {
      says: 'The radio goes where the rod goes.',
      ask: { together: ['radio', 'own-rod'] },
      ofFile: 'case-27-rod.site.yaml',
      inState: 'storm',
    },
    {
      says: 'And that is not where the house goes.',
      ask: { apart: ['own-rod', 'main-panel'] },
      ofFile: 'case-27-rod.site.yaml',
      inState: 'storm',
    },
  ],
  mustNot: [
    {
      says: 'A wire that goes nobody knows where is no known bond to the service.',
      ask: { together: ['radio', 'main-panel'] },
    },
    {
      says: 'A radio on a ground wire is not tied to nothing.',
      ask: { finding: 'no-orphan-equipment', at: 'radio' },
    },
    {
      says: 'The electrode of the service was not spoken of: it may not be called absent.',
      ask: { finding: 'service-electrode-known', at: 'main-panel' },
    },
    {
      says: 'With one wire left the radio bridges nothing.',
      ask: { bridgedBy: 'radio' },
      ofFile: 'case-27-rod.site.yaml',
      inState: 'storm',
    },
    {
      says: 'Pulled cables do not bond a rod.',
      ask: { finding: 'all-electrodes-one-system', at: 'own-rod', outcome: 'met' },
      ofFile: 'case-27-rod.site.yaml',
      inState: 'storm',
    },
  ],
  notYet: [
    {
      sentence: 'Lightning in the road lifted the ground under the house.',
      because: 'a strike to open ground beside the site is not worked out',
    },
    { sentence: 'The garage opener and the telephones were destroyed.', because: 'needs the strike calculation' },
  ],
};
