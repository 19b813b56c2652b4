import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-34',
  title: 'Lattice tower bolted to granite',
  sources: ['https://forums.qrz.com/index.php?threads/grounding-a-tower-mounted-on-rock.770353/'],
  grade: 'A',
  files: ['case-34.site.yaml', 'case-34-after.site.yaml'],
  must: [
    {
      says: 'No concrete electrode and no rod: the tower is not grounded.',
      ask: { finding: 'mast-grounded', at: 'tower', severity: 'hazard' },
    },
    {
      says: 'Nothing was told of the service.',
      ask: { finding: 'service-electrode-known', outcome: 'cannot tell' },
    },
    {
      says: 'On flat rods and bars in concrete, tower and electrodes are one system.',
      ask: { together: ['tower', 'flat-rod-1', 'flat-rod-2', 'flat-rod-3', 'bars-in-soil'] },
      ofFile: 'case-34-after.site.yaml',
    },
    {
      says: 'A rod laid flat is a way to earth.',
      ask: { way: ['tower', 'flat-rod-1'] },
      ofFile: 'case-34-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'Bolts in rock are no electrode.',
      ask: { finding: 'mast-grounded', at: 'tower', outcome: 'met' },
    },
    {
      says: 'An electrode that is not there is not reported as apart.',
      ask: { finding: 'all-electrodes-one-system', at: 'tower-electrode' },
    },
    {
      says: 'With the flat rods the tower is grounded.',
      ask: { finding: 'mast-grounded', at: 'tower' },
      ofFile: 'case-34-after.site.yaml',
    },
    {
      says: 'A flat rod is not short because it is not deep: its length was not told.',
      ask: { finding: 'rod-length-us', at: 'flat-rod-1' },
      ofFile: 'case-34-after.site.yaml',
    },
    {
      says: 'One of three does not stand alone.',
      ask: { finding: 'single-rod-25-ohm', at: 'flat-rod-1' },
      ofFile: 'case-34-after.site.yaml',
    },
  ],
  notYet: [
    { sentence: 'Propose a ring or radials.', because: 'proposals of works come later' },
    {
      sentence: 'Plates laid radially do as well as rods.',
      because: 'the better-described of two alternatives is typed; proposals of works come later',
    },
    { sentence: 'Read the chapter on rock of the public military handbook.', because: 'report wording' },
  ],
};
