import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-50',
  title: 'Rooftop solar and a tower to come',
  sources: ['http://lists.contesting.com/pipermail/towertalk/2012-October/132205.html'],
  grade: 'A',
  files: ['case-50.site.yaml', 'case-50-after.site.yaml'],
  must: [
    { says: 'One path from the frame goes down outside to the rod.', ask: { way: ['array', 'array-rod'] } },
    { says: 'The other goes along the DC wiring to the main panel.', ask: { way: ['array', 'main-panel'] } },
    {
      says: 'Whether the rod is tied to the service turns on the frame being one piece of metal.',
      ask: { perhapsUnbonded: 'array-rod' },
    },
    {
      says: 'So that it is one system with the service cannot be told.',
      ask: { finding: 'all-electrodes-one-system', at: 'array-rod', outcome: 'cannot tell' },
    },
    { says: 'The DC line comes in with no protector.', ask: { crossesUnprotected: 'solar-dc', building: 'house' } },
    {
      says: 'On the perimeter, rods and service are one system.',
      ask: { together: ['array-rod', 'second-rod', 'perimeter', 'main-panel'] },
      ofFile: 'case-50-after.site.yaml',
    },
  ],
  mustNot: [
    { says: 'The frame is bonded, twice.', ask: { finding: 'metalwork-bonded', at: 'array' } },
    {
      says: 'The wire straight down outside is no path through the building.',
      ask: { finding: 'no-lightning-path-through-building', at: 'down-wire' },
    },
    { says: 'An 8 ft rod is long enough.', ask: { finding: 'rod-length-us', at: 'array-rod' } },
    {
      says: 'A rod nobody measured does not meet the 25 ohm condition.',
      ask: { finding: 'single-rod-25-ohm', at: 'array-rod', outcome: 'met' },
    },
    {
      says: 'With the perimeter the rod is not reported as apart.',
      ask: { finding: 'all-electrodes-one-system', at: 'array-rod' },
      ofFile: 'case-50-after.site.yaml',
    },
    {
      says: 'Nor can it be in doubt: the perimeter does not need the frame.',
      ask: { perhapsUnbonded: 'array-rod' },
      ofFile: 'case-50-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'More than one rod.',
      because: 'whether this one is alone turns on the frame and on the electrode of the service, both unknown',
    },
    {
      sentence: 'Place the rods in moist soil outside the strip that the eaves keep dry.',
      because: 'the file says nothing of wet and dry ground beside a wall; proposals of works come later',
    },
    { sentence: 'The frame is open to a strike.', because: 'needs the strike calculation' },
  ],
};
