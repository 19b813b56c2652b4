import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-11',
  title: 'Upstairs shack: is one panel at ground level enough?',
  sources: [
    'http://lists.contesting.com/_towertalk/2002-07/msg00761.html',
    'http://lists.contesting.com/pipermail/towertalk/2002-July/049331.html',
  ],
  grade: 'B',
  dissent:
    'The asker held the one panel below to be enough. The better-argued side: only if every cable, mains and telephone too, comes up from it in one bundle; else a second common point at the room.',
  files: ['case-11.site.yaml', 'case-11-after.site.yaml'],
  must: [
    { says: 'The mains reaches the radio without passing the panel below.', ask: { reaches: ['radio', 'outlet'] } },
    { says: 'The feed line reaches it from the panel.', ask: { reaches: ['radio', 'coax'] } },
    { says: 'The telephone reaches the room by its own route.', ask: { reaches: ['phone-set', 'phone'] } },
    { says: 'The mains has no protector on its way to the radio.', ask: { coreUnprotected: 'outlet' } },
    {
      says: 'What ties the panel was not told.',
      ask: { finding: 'panel-tied-to-service', at: 'entry', outcome: 'cannot tell' },
    },
    {
      says: 'The room bar joins shields, protective earths and telecom protectors with the panel below.',
      ask: { together: ['room-bar', 'radio', 'mains-unit', 'phone-unit', 'entry'] },
      ofFile: 'case-11-after.site.yaml',
    },
  ],
  mustNot: [
    { says: 'Not told is not untied.', ask: { finding: 'panel-tied-to-service', at: 'entry' } },
    {
      says: 'The protective conductor of an outlet is no bond to the service.',
      ask: { together: ['radio', 'main-panel'] },
    },
    {
      says: 'The shield is bonded on the panel before it goes inside.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax' },
    },
    {
      says: 'With a protector at the room bar the mains is not bare.',
      ask: { coreUnprotected: 'outlet' },
      ofFile: 'case-11-after.site.yaml',
    },
    {
      says: 'Nor the telephone.',
      ask: { coreUnprotected: 'phone' },
      ofFile: 'case-11-after.site.yaml',
    },
    {
      says: 'A room bar does not bond the service by itself.',
      ask: { together: ['room-bar', 'main-panel'] },
      ofFile: 'case-11-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'For each box, the conductors that do not pass its reference bar.',
      because: 'the study says what reaches a box, not which of it passes a given bar; no claim can ask for it',
    },
    {
      sentence: 'Every cable comes up in one bundle from the panel.',
      because: 'one bundle makes a difference in the strike calculation only',
    },
    { sentence: 'Route the lines past the service first.', because: 'proposals of works come later' },
  ],
};
