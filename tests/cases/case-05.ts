import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-05',
  title: 'One 25 ft mast, 15 years ungrounded, meter 100 ft away',
  sources: ['https://forums.radioreference.com/threads/grounding-antenna.290821/post-2187316'],
  grade: 'A',
  files: ['case-05.site.yaml', 'case-05-rod.site.yaml'],
  must: [
    {
      says: 'No electrode could be found at the service: verify.',
      ask: { finding: 'service-electrode-known', at: 'meter', outcome: 'cannot tell' },
    },
    {
      says: 'That is the bigger defect and stands above the mast.',
      ask: { first: ['service-electrode-known'], among: 1 },
    },
    { says: 'The rod to look for is on the list of field checks.', ask: { unknownAt: /service-rod/ } },
    { says: 'A mast used for receiving only has to be grounded too.', ask: { finding: 'mast-grounded', at: 'mast' } },
    {
      says: 'The feed line has neither arrester nor ground block at the entry.',
      ask: { finding: 'arrester-on-every-feed-line', at: 'coax' },
    },
    { says: 'Nor is its shield bonded there.', ask: { finding: 'shield-bonded-at-entry', at: 'coax' } },
    {
      says: 'One rod and stop: a rod without bond.',
      ask: { finding: 'all-electrodes-one-system', at: 'mast-rod', severity: 'hazard' },
      ofFile: 'case-05-rod.site.yaml',
    },
    { says: 'That rod does not reach the service.', ask: { unbonded: 'mast-rod' }, ofFile: 'case-05-rod.site.yaml' },
    {
      says: 'It does not stand in for the ground of the service.',
      ask: { finding: 'antenna-rod-is-not-a-substitute', at: 'mast' },
      ofFile: 'case-05-rod.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'A pipe standing on soil is no grounded mast.',
      ask: { finding: 'mast-grounded', at: 'mast', outcome: 'met' },
    },
    {
      says: 'Not found is not the same as absent.',
      ask: { finding: 'service-electrode-known', at: 'meter' },
    },
    {
      says: 'A rod that is not there is not measured.',
      ask: { finding: 'rod-length-us', at: 'mast-rod' },
    },
    {
      says: 'With its rod the mast is grounded, if not bonded.',
      ask: { finding: 'mast-grounded', at: 'mast' },
      ofFile: 'case-05-rod.site.yaml',
    },
    {
      says: 'A lone rod nobody measured does not meet the 25 ohm condition.',
      ask: { finding: 'single-rod-25-ohm', at: 'mast-rod', outcome: 'met' },
      ofFile: 'case-05-rod.site.yaml',
    },
  ],
  notYet: [
    { sentence: 'Grounding does not attract strikes.', because: 'report wording' },
    {
      sentence: 'A rod that is not bonded is worse than useless during a fault.',
      because: 'fault currents of the mains are not worked out; the finding of the unbonded rod stands above',
    },
  ],
};
