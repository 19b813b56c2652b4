import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-49',
  title: 'Lattice pylon and house earth (France)',
  sources: ['https://mhz-radio.forumactif.com/t882-pylone-prise-de-terre'],
  grade: 'A',
  files: ['case-49.site.yaml', 'case-49-after.site.yaml'],
  must: [
    { says: 'Pylon and house have an earth each and no bond.', ask: { apart: ['pylon', 'house-bar'] } },
    { says: 'The earth under the block does not reach the house earth.', ask: { unbonded: 'under-block' } },
    {
      says: 'The earth of the pylon has to be tied to the main earthing bar.',
      ask: { finding: 'iec-antenna-electrode-to-main-bar', at: 'under-block' },
    },
    { says: 'The cables tie the two earths in any case, without being a bond.', ask: { bridgedBy: 'coax' } },
    {
      says: 'Unplugging in a storm does not tie the earths.',
      ask: { unbonded: 'under-block' },
      inState: 'storm',
    },
    {
      says: 'Unplugged, the feed line no longer reaches the radio.',
      ask: { reachesNot: ['radio', 'coax'], state: 'storm' },
    },
    {
      says: 'Both earths tied: one system.',
      ask: { together: ['pylon', 'under-block', 'house-bar', 'house-earth'] },
      ofFile: 'case-49-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'A feed line and a rotor cable are no bond.',
      ask: { together: ['pylon', 'house-bar'] },
    },
    { says: 'The pylon is earthed at its foot.', ask: { finding: 'mast-grounded', at: 'pylon' } },
    {
      says: 'With the bond the earth of the pylon is not reported as apart.',
      ask: { finding: 'iec-antenna-electrode-to-main-bar', at: 'under-block' },
      ofFile: 'case-49-after.site.yaml',
    },
    {
      says: 'With the bond it is not unbonded either.',
      ask: { unbonded: 'under-block' },
      ofFile: 'case-49-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Commercial practice is a star of flat strip with rods at the ends, all shields on a plate.',
      because: 'proposals of works come later',
    },
    { sentence: 'French terms in the glossary.', because: 'report wording' },
    {
      sentence: 'As in case-20: a person who unplugs stands between two earths.',
      because: 'this report does not say where the cables are pulled',
    },
    { sentence: 'The tie is needed at 50 Hz.', because: 'fault currents of the mains are not worked out' },
  ],
};
