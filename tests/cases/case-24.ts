import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-24',
  title: 'The 50-thousand strike: coax not even connected',
  sources: ['http://lists.contesting.com/archives/html/Towertalk/2019-09/msg00131.html'],
  grade: 'A',
  files: ['case-24.site.yaml', 'case-24-after.site.yaml'],
  must: [
    {
      says: 'With the coax off it no longer reaches the first radio.',
      ask: { reachesNot: ['radio-1', 'coax-1'], state: 'storm' },
    },
    {
      says: 'The mains still does.',
      ask: { reaches: ['radio-1', 'outlet-radio-1'], state: 'storm' },
    },
    {
      says: 'So does the USB cable.',
      ask: { reaches: ['radio-1', 'usb-1'], state: 'storm' },
    },
    {
      says: 'The mains still reaches the second radio.',
      ask: { reaches: ['radio-2', 'outlet-radio-2'], state: 'storm' },
    },
    {
      says: 'So does the serial cable.',
      ask: { reaches: ['radio-2', 'serial-2'], state: 'storm' },
    },
    {
      says: 'The computer has mains and data.',
      ask: { reaches: ['computer-1', 'outlet-computer-1'], state: 'storm' },
    },
    {
      says: 'The televisions never had coax to take off: the mains reaches them.',
      ask: { reaches: ['televisions', 'outlet-televisions'], state: 'storm' },
    },
    {
      says: 'Where the pulled ends hang was not told.',
      ask: { finding: 'spare-and-disconnected-lines', at: 'coax-1', outcome: 'cannot tell' },
      inState: 'storm',
    },
    {
      says: 'Whether the service had a protector was not told.',
      ask: { finding: 'service-surge-protector', at: 'main-panel', outcome: 'cannot tell' },
    },
    {
      says: 'Nor what the service is grounded by.',
      ask: { finding: 'service-electrode-known', at: 'main-panel', outcome: 'cannot tell' },
    },
    {
      says: 'As agreed, rods, single point and service are one system.',
      ask: { together: ['single-point', 'shack-rods', 'main-panel'] },
      ofFile: 'case-24-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'Taking the coax off protects nothing.',
      ask: { finding: 'arrester-on-every-feed-line', at: 'coax-1', outcome: 'met' },
      inState: 'storm',
    },
    {
      says: 'Data cable and cords make no bond of radio and computer.',
      ask: { together: ['radio-1', 'computer-1'] },
    },
    {
      says: 'A telephone that comes by fibre has no wire to protect.',
      ask: { finding: 'arrester-on-every-control-line', at: 'phone' },
    },
    {
      says: 'No electrode was told of: none is found apart.',
      ask: { finding: 'all-electrodes-one-system' },
    },
    {
      says: 'With the protector the service is not found wanting.',
      ask: { finding: 'service-surge-protector', at: 'main-panel' },
      ofFile: 'case-24-after.site.yaml',
    },
    {
      says: 'The single point is tied to the service.',
      ask: { finding: 'panel-tied-to-service', at: 'single-point' },
      ofFile: 'case-24-after.site.yaml',
    },
    {
      says: 'A shield on the single point is bonded before it goes inside.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax-1' },
      ofFile: 'case-24-after.site.yaml',
    },
    {
      says: 'The rods of the shack are not reported as apart.',
      ask: { unbonded: 'shack-rods' },
      ofFile: 'case-24-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Per box, how many conductors are left with the coax off.',
      because: 'each is claimed by itself; no question counts them',
    },
    {
      sentence: 'All switches were lost.',
      because: 'what cables they had was not told, but for the link by radio',
    },
    { sentence: 'What was lost in the direct hit.', because: 'needs the strike calculation' },
    { sentence: 'The figure for the insurer.', because: 'report wording' },
  ],
};
