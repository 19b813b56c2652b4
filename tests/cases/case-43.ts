import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-43',
  title: 'UHF link on a four-storey hospital without lightning protection',
  sources: ['https://mail-archive.com/repeater-builder@yahoogroups.com/msg66029.html'],
  grade: 'A',
  files: ['case-43.site.yaml', 'case-43-after.site.yaml'],
  must: [
    {
      says: 'A machine on the roof is no electrode: the mast is not grounded by it.',
      ask: { finding: 'mast-grounded', at: 'mast' },
    },
    { says: 'There is no way from the mast to the steel.', ask: { noWay: ['mast', 'steel'] } },
    { says: 'Mast and steel are apart.', ask: { apart: ['mast', 'steel'] } },
    {
      says: 'Nothing was told of the service.',
      ask: { finding: 'service-electrode-known', outcome: 'cannot tell' },
    },
    {
      says: 'As agreed, the mast has its way to the steel.',
      ask: { way: ['mast', 'steel'] },
      ofFile: 'case-43-after.site.yaml',
    },
    {
      says: 'Mast and steel are one system.',
      ask: { together: ['mast', 'steel'] },
      ofFile: 'case-43-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'A wire that ends on a machine does not ground a mast.',
      ask: { finding: 'mast-grounded', at: 'mast', outcome: 'met' },
    },
    {
      says: 'Where the shield is bonded on the way in was not told.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax' },
    },
    {
      says: 'On the steel the mast is grounded.',
      ask: { finding: 'mast-grounded', at: 'mast' },
      ofFile: 'case-43-after.site.yaml',
    },
    {
      says: 'Steel of a building is no lone rod.',
      ask: { finding: 'single-rod-25-ohm', at: 'steel' },
      ofFile: 'case-43-after.site.yaml',
    },
    {
      says: 'Whether the steel is tied to the service was not told: the mast may not be called apart from it.',
      ask: { finding: 'antenna-rod-is-not-a-substitute', at: 'mast' },
      ofFile: 'case-43-after.site.yaml',
    },
    {
      says: 'The one electrode that was told of is not reported as apart.',
      ask: { finding: 'all-electrodes-one-system', at: 'steel' },
      ofFile: 'case-43-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Build the protection of the mast by the lightning standard.',
      because: 'no rule asks whether a building has lightning protection; proposals of works come later',
    },
    {
      sentence: 'Without one the installer may be liable and the insurer unwilling.',
      because: 'report wording',
    },
  ],
};
