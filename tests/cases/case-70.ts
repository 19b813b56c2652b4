import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-70',
  title: 'Arrester on an open port: arc across the entry panel socket',
  sources: [
    'http://lists.contesting.com/_towertalk/2010-07/msg00564.html',
    'http://lists.contesting.com/_towertalk/2010-07/msg00599.html',
  ],
  grade: 'A',
  files: ['case-70.site.yaml', 'case-70-open.site.yaml', 'case-70-after.site.yaml'],
  must: [
    { says: 'The core of the feed line has no protector.', ask: { coreUnprotected: 'feed' } },
    {
      says: 'An arrester belongs at the panel.',
      ask: { finding: 'arrester-on-every-feed-line', at: 'feed' },
    },
    {
      says: 'Whether the aerials drain their lines was not told.',
      ask: { finding: 'core-static-drain', at: 'port-1', outcome: 'cannot tell' },
    },
    {
      says: 'Where no aerial does, the core of the feed line floats.',
      ask: { coreUndrained: 'feed' },
      ofFile: 'case-70-open.site.yaml',
    },
    {
      says: 'So does each port: the first.',
      ask: { finding: 'core-static-drain', at: 'port-1' },
      ofFile: 'case-70-open.site.yaml',
    },
    {
      says: 'And the second.',
      ask: { finding: 'core-static-drain', at: 'port-2' },
      ofFile: 'case-70-open.site.yaml',
    },
    {
      says: 'Unplugged at the panel with the end loose: a pulled line that is not grounded.',
      ask: { finding: 'spare-and-disconnected-lines', at: 'feed' },
      inState: 'storm',
    },
  ],
  mustNot: [
    {
      says: 'Unplugging is no protector of the core.',
      ask: { finding: 'arrester-on-every-feed-line', at: 'feed', outcome: 'met' },
    },
    {
      says: 'A connector on the panel bonds the shield; it is the core that is bare.',
      ask: { finding: 'shield-bonded-at-entry', at: 'feed' },
    },
    {
      says: 'What the panel is tied to was not told: it may not be called tied.',
      ask: { finding: 'panel-tied-to-service', at: 'entry', outcome: 'met' },
    },
    {
      says: 'Nor floating.',
      ask: { finding: 'panel-tied-to-service', at: 'entry' },
    },
    {
      says: 'An unknown aerial may not be said to leave its line floating.',
      ask: { finding: 'core-static-drain', at: 'port-1' },
    },
    {
      says: 'With an arrester at the panel the feed line has its protector.',
      ask: { finding: 'arrester-on-every-feed-line', at: 'feed' },
      ofFile: 'case-70-after.site.yaml',
    },
    {
      says: 'With a bleed it has its drain.',
      ask: { coreUndrained: 'feed' },
      ofFile: 'case-70-after.site.yaml',
    },
    {
      says: 'With a choke so has the port.',
      ask: { finding: 'core-static-drain', at: 'port-2' },
      ofFile: 'case-70-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Ground unused ports.',
      because: 'no rule reads what a switch does with its unused ports; `unused_ports` is typed for it',
    },
    { sentence: 'Arc across the open socket.', because: 'needs the strike calculation' },
  ],
};
