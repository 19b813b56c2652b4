import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-61',
  title: 'Sailing boat, masthead whip vaporised',
  sources: ['https://www.sailnet.com/threads/lightning-strikes-once.55960/'],
  grade: 'A',
  files: ['case-61.site.yaml', 'case-61-sloop.site.yaml'],
  must: [
    { says: 'The hull is bonded: mast and hull are one.', ask: { together: ['mast', 'hull'] } },
    { says: 'The line from the masthead reaches the radio.', ask: { reaches: ['vhf-radio', 'feed'] } },
    { says: 'Whether the water is salt or fresh is among the unknowns.', ask: { unknownAt: /soil/ } },
    {
      says: 'In the sloop mast, keelson and keel are one.',
      ask: { together: ['mast', 'keelson', 'keel'] },
      ofFile: 'case-61-sloop.site.yaml',
    },
    {
      says: 'The receiver that was lost there was connected to nothing.',
      ask: { noWay: ['mast', 'loose-receiver'] },
      ofFile: 'case-61-sloop.site.yaml',
    },
  ],
  mustNot: [
    { says: 'A mast bonded to the hull is earthed.', ask: { finding: 'mast-grounded', at: 'mast' } },
    {
      says: 'Nor is a mast on keelson and keel found wanting.',
      ask: { finding: 'mast-grounded', at: 'mast' },
      ofFile: 'case-61-sloop.site.yaml',
    },
    {
      says: 'A keel is no rod that wants a measurement.',
      ask: { finding: 'single-rod-25-ohm', at: 'keel' },
      ofFile: 'case-61-sloop.site.yaml',
    },
    {
      says: 'Nothing was told of a service: it may not be said to have no electrode.',
      ask: { finding: 'service-electrode-known' },
    },
    {
      says: 'Bonding saved the structure, not the electronics: the feed line is no bond of the radio.',
      ask: { together: ['vhf-radio', 'hull'] },
    },
  ],
  notYet: [
    {
      sentence: 'Haul out; inspect underwater fittings, rig and wiring.',
      because: 'proposals of works come later',
    },
    {
      sentence: 'The report separates structure and person from equipment.',
      because: 'report wording',
    },
    {
      sentence: 'Water as soil, salt against fresh.',
      because: 'needs electrodes in water, where the depth and the water are known; neither was told',
    },
    {
      sentence: 'Nearly all electronics lost, a receiver connected to nothing too.',
      because: 'needs the strike calculation',
    },
    {
      sentence: 'Hull fittings that are not of metal.',
      because: 'nothing is tied to them and no rule speaks of them',
    },
  ],
};
