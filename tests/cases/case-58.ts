import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-58',
  title: 'Recreational vehicle',
  sources: ['https://www.openroadsradio.net/forums/showthread.php?t=1527'],
  grade: 'B',
  dissent:
    'Whether the stub rod is worth anything: some take it for a ground, the better argued side for radio frequency and static only.',
  files: ['case-58.site.yaml'],
  must: [
    { says: 'Bus, frame and rod are one.', ask: { together: ['bus', 'frame', 'stub-rod'] } },
    {
      says: 'A stub rod of 4 ft is no lightning earth: it is shorter than the code asks of a rod.',
      ask: { finding: 'rod-length-us', at: 'stub-rod' },
    },
    {
      says: 'The earth of the supply is unknown.',
      ask: { finding: 'service-electrode-known', outcome: 'cannot tell' },
    },
    { says: 'That is among the unknowns.', ask: { unknownAt: /service|supply/ } },
    {
      says: 'One lead and one rod carry all of it.',
      ask: { weakPoint: 'frame-lead', takesOff: ['bus'] },
    },
  ],
  mustNot: [
    {
      says: 'Not a protected site: a rod that nobody measured does not meet the 25 ohm condition.',
      ask: { finding: 'single-rod-25-ohm', at: 'stub-rod', outcome: 'met' },
    },
    {
      says: 'Not a protected site: nothing says that the service has an electrode.',
      ask: { finding: 'service-electrode-known', outcome: 'met' },
    },
    {
      says: 'What the mast hangs on was not told: it may not be called ungrounded.',
      ask: { finding: 'mast-grounded', at: 'mast' },
    },
    { says: 'Nor grounded.', ask: { finding: 'mast-grounded', at: 'mast', outcome: 'met' } },
    {
      says: 'One electrode alone is not two that want a bond.',
      ask: { finding: 'all-electrodes-one-system', at: 'stub-rod' },
    },
  ],
  notYet: [
    {
      sentence: 'Single bus, short #10 or larger, clean metal.',
      because: 'sizes and lengths of the leads were not told, and a #10 lead in a vehicle is asked by no rule',
    },
    {
      sentence: 'Temporary electrode class.',
      because: 'the site is marked temporary; no rule tells a rod pushed in by hand from a driven one',
    },
    {
      sentence: 'Disconnect and lower the mast.',
      because: 'what is connected to the mast was not told; proposals of works come later',
    },
    { sentence: 'Conclusion: not a protected site.', because: 'report wording' },
  ],
};
