import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-40',
  title: 'Guy-wire anchor conductor found melted',
  sources: ['https://www.engineeringradio.us/blog/2011/10/the-melted-ground-wire/'],
  grade: 'A',
  files: ['case-40.site.yaml', 'case-40-after.site.yaml'],
  must: [
    {
      says: 'One conductor has burned open.',
      ask: { finding: 'condition-sound', at: 'anchor-lead-6' },
    },
    { says: 'An open conductor is no way.', ask: { noWay: ['guy-6@tower', 'anchor-rod-6'] } },
    {
      says: 'Its guy has lost its ground.',
      ask: { finding: 'guy-anchor-grounded', at: 'guy-6' },
    },
    { says: 'The others have theirs.', ask: { way: ['guy-1@tower', 'anchor-rod-1'] } },
    {
      says: 'Repaired, the sixth has its own again.',
      ask: { way: ['guy-6@tower', 'anchor-rod-6'] },
      ofFile: 'case-40-after.site.yaml',
    },
    {
      says: 'And stands as grounded.',
      ask: { finding: 'guy-anchor-grounded', at: 'guy-6', outcome: 'met' },
      ofFile: 'case-40-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'A conductor that was not found burned is not reported.',
      ask: { finding: 'condition-sound', at: 'anchor-lead-1' },
    },
    { says: 'Five guys are grounded.', ask: { finding: 'guy-anchor-grounded', at: 'guy-1' } },
    { says: 'That also goes for the fifth.', ask: { finding: 'guy-anchor-grounded', at: 'guy-5' } },
    {
      says: 'How the anchors are tied to the earth of the tower was not told: they may not be called apart.',
      ask: { finding: 'all-electrodes-one-system', at: 'anchor-rod-1' },
    },
    {
      says: 'Nor may the tower be called ungrounded.',
      ask: { finding: 'mast-grounded', at: 'tower' },
    },
    {
      says: 'Of what metal the rods are was not told.',
      ask: { finding: 'galvanised-and-copper-in-soil', at: 'guy-1' },
    },
    {
      says: 'Repaired, nothing is found open.',
      ask: { finding: 'condition-sound', at: 'anchor-lead-6' },
      ofFile: 'case-40-after.site.yaml',
    },
    {
      says: 'Nor is the sixth guy found without ground.',
      ask: { finding: 'guy-anchor-grounded', at: 'guy-6' },
      ofFile: 'case-40-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'The wire is clamped to every guy of its anchor in turn.',
      because: 'how many guys meet at an anchor was not told; one stands for all',
    },
    {
      sentence: 'The missing path pushes current to other parts of the site.',
      because: 'needs the strike calculation',
    },
    {
      sentence: 'Walk twice a year; keep the inspection with date and photo.',
      because: 'no date was told, and the record of inspections is report wording',
    },
  ],
};
