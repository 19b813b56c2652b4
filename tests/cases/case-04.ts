import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-04',
  title: 'Is a 200 ft bond low impedance? I do not know how to proceed',
  sources: ['http://mail.bvarc.org/pipermail/bvarc_bvarc.org/attachments/20210527/b44199f8/attachment.htm'],
  grade: 'C',
  files: ['case-04.site.yaml', 'case-04-rod.site.yaml', 'case-04-bond.site.yaml'],
  must: [
    { says: 'The far end of the thick cable is a field check.', ask: { unknownAt: /thick-one/ } },
    {
      says: 'Panel, rod and data block are one system.',
      ask: { together: ['main-panel', 'service-rod', 'data-block'] },
    },
    {
      says: 'The service has a rod and is tied to it.',
      ask: { finding: 'service-electrode-known', at: 'main-panel', outcome: 'met' },
    },
    {
      says: 'Whether the water pipe is bonded turns on the far end of the thick cable.',
      ask: { finding: 'metalwork-bonded', at: 'water-pipe', outcome: 'cannot tell' },
    },
    {
      says: 'An electrode of the radio without a bond does not reach the service.',
      ask: { unbonded: 'shack-rod' },
      ofFile: 'case-04-rod.site.yaml',
    },
    {
      says: 'For an electrode tied to the radio the code requires it.',
      ask: { finding: 'all-electrodes-one-system', at: 'shack-rod' },
      ofFile: 'case-04-rod.site.yaml',
    },
    {
      says: 'Bonded, shack and service are one system.',
      ask: { together: ['shack-rod', 'shack-bar', 'service-rod', 'main-panel'] },
      ofFile: 'case-04-bond.site.yaml',
    },
    {
      says: '200 ft of #6, straight, comes to 125 uH.',
      ask: { way: ['shack-rod', 'service-rod'], lengthM: [54.8, 67.1], inductanceH: [112e-6, 138e-6] },
      ofFile: 'case-04-bond.site.yaml',
    },
    {
      says: 'In a strike its two ends are not at one potential.',
      ask: { finding: 'bond-between-groups-long', at: 'long-bond' },
      ofFile: 'case-04-bond.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'A cable with an unknown far end bonds nothing for certain.',
      ask: { together: ['water-pipe', 'main-panel'] },
    },
    {
      says: 'Nor is the pipe unbonded for certain.',
      ask: { finding: 'metalwork-bonded', at: 'water-pipe' },
    },
    {
      says: 'A rod nobody measured does not meet the 25 ohm condition.',
      ask: { finding: 'single-rod-25-ohm', at: 'service-rod', outcome: 'met' },
    },
    {
      says: 'Two wires on one rod are not known to share one clamp.',
      ask: { finding: 'one-conductor-per-clamp' },
    },
    {
      says: 'The clause asks for the bond and knows no limit of length.',
      ask: { finding: 'all-electrodes-one-system', at: 'shack-rod' },
      ofFile: 'case-04-bond.site.yaml',
    },
    {
      says: '#6 copper is the size asked for, at any length.',
      ask: { finding: 'antenna-electrode-bond-size', at: 'long-bond' },
      ofFile: 'case-04-bond.site.yaml',
    },
    {
      says: 'With the second rod bonded the first is not alone.',
      ask: { finding: 'single-rod-25-ohm', at: 'service-rod' },
      ofFile: 'case-04-bond.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Protect at the shack as its own zone: entry panel with all services of that room.',
      because: 'proposals of works come later',
    },
    {
      sentence: 'Whether a bonding bar between systems is asked for depends on the code cycle adopted locally.',
      because: 'no rule asks for that bar',
    },
  ],
};
