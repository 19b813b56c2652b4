import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-07',
  title: 'Wire antenna, roof push-up mast, two rods that "cannot" be bonded',
  sources: [
    'https://forums.qrz.com/index.php?threads/cant-bond-ham-shack-ground-to-service-entry-ground.601973/page-2',
    'https://forums.qrz.com/index.php?threads/cant-bond-ham-shack-ground-to-service-entry-ground.601973/page-8',
  ],
  grade: 'A',
  files: ['case-07.site.yaml', 'case-07-bond.site.yaml'],
  must: [
    { says: 'The rod of the shack stands apart.', ask: { unbonded: 'shack-rod' } },
    {
      says: 'That is severe.',
      ask: { finding: 'all-electrodes-one-system', at: 'shack-rod', severity: 'hazard' },
    },
    {
      says: 'The first question back: where are your coax shields bonded?',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax', outcome: 'cannot tell' },
    },
    { says: 'It is listed as a gap in the data.', ask: { unknownAt: /coax/ } },
    { says: 'The mast is on the ground of the service.', ask: { together: ['mast', 'service-rod'] } },
    {
      says: 'Bent or not, the bond makes one system.',
      ask: { together: ['mast', 'service-rod', 'shack-rod'] },
      ofFile: 'case-07-bond.site.yaml',
    },
    {
      says: 'The bends are counted: four right angles.',
      ask: { way: ['service-rod', 'shack-rod'], bendsDeg: [360, 360] },
      ofFile: 'case-07-bond.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'Not stated is no pass.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax', outcome: 'met' },
    },
    { says: 'Nor is it a failure.', ask: { finding: 'shield-bonded-at-entry', at: 'coax' } },
    { says: 'A mast with its lead to the service is grounded.', ask: { finding: 'mast-grounded', at: 'mast' } },
    {
      says: 'The radio between the rods is no bond.',
      ask: { together: ['service-rod', 'shack-rod'] },
    },
    {
      says: 'A right angle is no bend that turns back.',
      ask: { finding: 'bend-angle', at: 'bond' },
      ofFile: 'case-07-bond.site.yaml',
    },
    {
      says: 'How tight the bends are was not told.',
      ask: { finding: 'bend-radius', at: 'bond' },
      ofFile: 'case-07-bond.site.yaml',
    },
    {
      says: 'Bends are a minor penalty: they do not undo the bond.',
      ask: { finding: 'all-electrodes-one-system', at: 'shack-rod' },
      ofFile: 'case-07-bond.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Current enters at one rod and leaves at the other through the radio.',
      because: 'how the coax and the mains meet was not told; needs the strike calculation',
    },
    {
      sentence: 'Bare wire in soil adds electrode length.',
      because: 'the run was forced to the surface and no length was told; needs positions and soil',
    },
  ],
};
