import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-53',
  title: 'Village FM station, 150 ft tower, one watered rod (West Africa)',
  sources: [
    'http://lists.contesting.com/pipermail/towertalk/1998-December/021448.html',
    'http://lists.contesting.com/pipermail/towertalk/1998-December/021496.html',
  ],
  grade: 'B',
  dissent: 'Whether the earths of tower and building be joined where they lie more than 50 to 100 ft apart.',
  files: ['case-53.site.yaml', 'case-53-soil.site.yaml'],
  must: [
    { says: 'One rod carries the whole tower: lose it and the tower is off earth.', ask: { weakPoint: 'tower-rod' } },
    {
      says: 'The one lead to it is as weak a point.',
      ask: { weakPoint: 'tower-lead', takesOff: ['tower'] },
    },
    {
      says: 'It is told as a single point of failure.',
      ask: { finding: 'single-point-of-failure-joint', at: 'tower-lead' },
    },
    {
      says: 'The line is grounded on the tower and not at the building.',
      ask: { finding: 'shield-bonded-at-entry', at: 'feed' },
    },
    { says: 'The mains has no protector.', ask: { finding: 'service-surge-protector', at: 'main-panel' } },
    { says: 'The rack is not grounded.', ask: { finding: 'no-orphan-equipment', at: 'rack' } },
    {
      says: 'A 3 ft rod in 100 ohm m comes to about 90 ohm (10 % either way).',
      ask: { earthOhm: 'tower-rod', within: [81, 99] },
      ofFile: 'case-53-soil.site.yaml',
    },
  ],
  mustNot: [
    { says: 'The tower has a rod and a lead.', ask: { finding: 'mast-grounded', at: 'tower' } },
    {
      says: 'The feed line is no bond between tower and building.',
      ask: { together: ['tower', 'transmitter'] },
    },
    {
      says: 'At what height the line leaves the tower was not told.',
      ask: { finding: 'line-goes-down-before-in', at: 'feed' },
    },
    {
      says: 'Where the electrode of the service is was not told: it may not be called absent.',
      ask: { finding: 'service-electrode-known', at: 'main-panel' },
    },
  ],
  notYet: [
    {
      sentence: 'Join the earths of tower and building.',
      because: 'disputed beyond 50 to 100 ft, and the distance is not told',
    },
    {
      sentence: 'Transmitter, mixers and recorders were lost in a direct hit.',
      because: 'needs the strike calculation',
    },
    { sentence: 'The repair is overseas.', because: 'nothing weighs how long a repair takes' },
  ],
};
