import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-08',
  title: 'Ground-mounted vertical 100 ft out, coax shield as the only bond',
  sources: ['https://www.reddit.com/r/HamRadio/comments/1ko2vm6/'],
  grade: 'A',
  dissent: 'Others argue that beyond 60 to 100 ft the conductor between the rods is not needed for lightning.',
  files: ['case-08.site.yaml', 'case-08-bond.site.yaml'],
  must: [
    { says: 'The two rods are not bonded.', ask: { apart: ['antenna-rod', 'entry-rod'] } },
    { says: 'The rod of the antenna does not reach the service.', ask: { unbonded: 'antenna-rod' } },
    {
      says: 'The shield does not do the job.',
      ask: { finding: 'screens-not-sole-bond', at: 'antenna-rod' },
    },
    { says: 'It carries current between the two systems all the same.', ask: { bridgedBy: 'coax' } },
    {
      says: 'The rod outside the shack is bonded.',
      ask: { together: ['entry-rod', 'coax-arrester', 'main-panel'] },
    },
    { says: '43 inches of vertical: feet must be meant.', ask: { askedAbout: /vertical.*height/ } },
    {
      says: 'With copper between the rods there is one system.',
      ask: { together: ['antenna-rod', 'entry-rod', 'main-panel'] },
      ofFile: 'case-08-bond.site.yaml',
    },
    {
      says: '100 ft of #6, straight, comes to 58 uH.',
      ask: { way: ['antenna-rod', 'entry-rod'], lengthM: [30.4, 30.6], inductanceH: [52.2e-6, 63.8e-6] },
      ofFile: 'case-08-bond.site.yaml',
    },
  ],
  mustNot: [
    { says: 'A shield never satisfies "bonded".', ask: { together: ['antenna-rod', 'entry-rod'] } },
    { says: 'A bonded rod is not reported as unbonded.', ask: { unbonded: 'entry-rod' } },
    { says: 'The arrester reaches its rod.', ask: { finding: 'arrester-bonded', at: 'coax-arrester' } },
    { says: 'The feed line has its arrester.', ask: { finding: 'arrester-on-every-feed-line', at: 'coax' } },
    { says: 'It is outside, where it belongs.', ask: { finding: 'discharge-unit-place', at: 'coax-arrester' } },
    {
      says: 'The shield is bonded through the arrester before it goes inside.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax' },
    },
    {
      says: 'With the conductor the shield is not the sole bond.',
      ask: { finding: 'screens-not-sole-bond', at: 'antenna-rod' },
      ofFile: 'case-08-bond.site.yaml',
    },
    {
      says: '#6 copper is the size asked for.',
      ask: { finding: 'antenna-electrode-bond-size', at: 'rod-bond' },
      ofFile: 'case-08-bond.site.yaml',
    },
    {
      says: '43 ft of vertical raises no question.',
      ask: { askedAbout: /vertical.*height/ },
      ofFile: 'case-08-bond.site.yaml',
    },
  ],
  notYet: [
    { sentence: 'Current in the shield couples to the centre conductor.', because: 'needs the strike calculation' },
    { sentence: 'Arrester at the entry on a reference bar.', because: 'proposals of works come later' },
  ],
};
