import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-47',
  title: 'Mast beside the house on a protective-multiple-earth supply (UK)',
  sources: [
    'https://engx.theiet.org/f/wiring-and-regulations/22743/lightning-conductor-for-ametuer-radio-antenna-mast---electrician-says-regular-pvc-sheated-yellow-green-wire-is-ok-from-mast-to-earth-rod',
  ],
  grade: 'B',
  dissent:
    'The size of the wire was agreed. Whether the separate island is needed was not: the owner planned it, the answers call it unnecessary and dangerous where both earths can be touched together.',
  files: ['case-47.site.yaml', 'case-47-touch.site.yaml', 'case-47-pme.site.yaml', 'case-47-after.site.yaml'],
  must: [
    { says: 'The island makes two earthing systems on one site.', ask: { apart: ['main-panel', 'mast-rod'] } },
    { says: 'The rod of the island does not reach the house earth.', ask: { unbonded: 'mast-rod' } },
    {
      says: 'The island lies on one rod with the mast.',
      ask: { together: ['radio-panel', 'earth-bar', 'mast-rod', 'mast'] },
    },
    {
      says: 'The two earths are dangerous where they can be touched together.',
      ask: { finding: 'shelters-within-reach-bonded', at: 'radio', severity: 'hazard' },
      ofFile: 'case-47-touch.site.yaml',
    },
    {
      says: 'A rod on the multiple-earth side has to be main-bonded.',
      ask: { finding: 'uk-multiple-earth-rf-rod-bond', at: 'mast-rod' },
      ofFile: 'case-47-pme.site.yaml',
    },
    {
      says: 'With the main bond rod, mast and house earth are one system.',
      ask: { together: ['main-panel', 'earth-bar', 'mast-rod', 'mast'] },
      ofFile: 'case-47-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: '35 mm2 is ample (25 mm2 is the tabulated bare size): no finding on its size.',
      ask: { finding: 'antenna-earthing-size-iec', at: 'mast-lead' },
    },
    { says: 'The mast has its rod and lead.', ask: { finding: 'mast-grounded', at: 'mast' } },
    {
      says: 'The rule of a lone rod and 25 ohm is of another country.',
      ask: { finding: 'single-rod-25-ohm', at: 'mast-rod' },
    },
    {
      says: 'Nothing is said of reach in the plan: no touch hazard may be stated as found.',
      ask: { finding: 'shelters-within-reach-bonded', at: 'radio' },
    },
    {
      says: 'A main-bonded rod is not reported as unbonded.',
      ask: { unbonded: 'mast-rod' },
      ofFile: 'case-47-after.site.yaml',
    },
    {
      says: 'A main bond of unstated size is not found wanting.',
      ask: { finding: 'uk-multiple-earth-rf-rod-bond', at: 'mast-rod' },
      ofFile: 'case-47-after.site.yaml',
    },
  ],
  notYet: [
    { sentence: 'Will the insulated wire last outdoors?', because: 'nothing speaks of the age of insulation' },
    {
      sentence: 'The island is not needed for its purpose.',
      because: 'an opinion on the plan; proposals of works come later',
    },
  ],
};
