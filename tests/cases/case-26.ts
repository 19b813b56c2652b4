import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-26',
  title: 'Underground for ten miles and hit twice',
  sources: ['http://lists.contesting.com/pipermail/towertalk/1997-August/007935.html'],
  grade: 'A',
  files: ['case-26.site.yaml', 'case-26-after.site.yaml'],
  must: [
    { says: 'A rod that is not connected is no ground.', ask: { noWay: ['vertical', 'vertical-rod'] } },
    { says: 'Rod and vertical are apart.', ask: { apart: ['vertical', 'vertical-rod'] } },
    { says: 'The rod is tied to nothing.', ask: { unbonded: 'vertical-rod' } },
    {
      says: 'That is a hazard.',
      ask: { finding: 'all-electrodes-one-system', at: 'vertical-rod', severity: 'hazard' },
    },
    {
      says: 'The telephone line is a prime route to its sets.',
      ask: { reaches: ['telephones', 'phone'] },
    },
    {
      says: 'Whether it has a protector was not told.',
      ask: { finding: 'arrester-on-every-control-line', at: 'phone', outcome: 'cannot tell' },
    },
    {
      says: 'Whether anything drains the insulated verticals was not told.',
      ask: { finding: 'core-static-drain', at: 'phased-coax', outcome: 'cannot tell' },
    },
    {
      says: 'The steel barn was hit away from the towers; whether it is bonded was not told.',
      ask: { finding: 'metalwork-bonded', at: 'barn-steel', outcome: 'cannot tell' },
    },
    {
      says: 'Connected and tied in, the rod grounds the vertical.',
      ask: { together: ['vertical', 'vertical-rod', 'main-panel'] },
      ofFile: 'case-26-after.site.yaml',
    },
    {
      says: 'The protector of the telephone is on the same system.',
      ask: { together: ['phone-protector', 'main-panel'] },
      ofFile: 'case-26-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'A driven rod is not a bonded one.',
      ask: { finding: 'all-electrodes-one-system', at: 'vertical-rod', outcome: 'met' },
    },
    {
      says: 'Underground is no protector.',
      ask: { finding: 'arrester-on-every-control-line', at: 'phone', outcome: 'met' },
    },
    {
      says: 'What grounds the tall tower was not told: it may not be called ungrounded.',
      ask: { finding: 'mast-grounded', at: 'tall-tower' },
    },
    {
      says: 'The electrode of the service was not spoken of.',
      ask: { finding: 'service-electrode-known', at: 'main-panel', outcome: 'met' },
    },
    {
      says: 'Connected, the rod is not reported as unbonded.',
      ask: { unbonded: 'vertical-rod' },
      ofFile: 'case-26-after.site.yaml',
    },
    {
      says: 'With a protector the telephone line is not found wanting.',
      ask: { finding: 'arrester-on-every-control-line', at: 'phone' },
      ofFile: 'case-26-after.site.yaml',
    },
    {
      says: 'With a choke at the feed static has its way.',
      ask: { finding: 'core-static-drain', at: 'phased-coax' },
      ofFile: 'case-26-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'A tall tower does not shelter everything: hit at 25 ft with 130 ft above, hit at the barn.',
      because: 'nothing works out where lightning strikes',
    },
    {
      sentence: 'An insulated base needs a gap across it.',
      because: 'no rule asks for a gap; a path for static is asked on the feed line',
    },
    { sentence: 'The coax exploded; the transformer was hit.', because: 'needs the strike calculation' },
  ],
};
