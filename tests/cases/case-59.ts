import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-59',
  title: 'Trailer tower, folded flat, on tyres and a wood block',
  sources: ['http://lists.contesting.com/archives/html/Towertalk/1999-08/msg00214.html'],
  grade: 'A',
  files: ['case-59.site.yaml', 'case-59-looked.site.yaml'],
  must: [
    {
      says: 'Of electrodes and wires nothing was told: whether the tower is grounded cannot be told.',
      ask: { finding: 'mast-grounded', at: 'trailer-tower', outcome: 'cannot tell' },
    },
    {
      says: 'Tyres and a wood block are no way to earth: once nothing else is there, the tower is not grounded.',
      ask: { finding: 'mast-grounded', at: 'trailer-tower' },
      ofFile: 'case-59-looked.site.yaml',
    },
    {
      says: 'The tall towers nearby are no part of it.',
      ask: { apart: ['trailer-tower', 'tower-80'] },
      ofFile: 'case-59-looked.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'Three taller towers nearby are no guarantee: they do not make it grounded.',
      ask: { finding: 'mast-grounded', at: 'trailer-tower', outcome: 'met' },
    },
    {
      says: 'Nor do they once somebody has looked.',
      ask: { finding: 'mast-grounded', at: 'trailer-tower', outcome: 'met' },
      ofFile: 'case-59-looked.site.yaml',
    },
    {
      says: 'Not told is not absent.',
      ask: { finding: 'mast-grounded', at: 'trailer-tower' },
    },
    {
      says: 'Standing near is no tie.',
      ask: { together: ['trailer-tower', 'tower-125'] },
    },
  ],
  notYet: [
    {
      sentence: 'Tyres do not insulate: the air gap of 0.1 m under each saucer is a flash-over edge.',
      because: 'needs the strike calculation, with a gap from metal to the ground',
    },
    {
      sentence: 'Shelter claims are probabilistic; nearby tall towers are no guarantee.',
      because: 'nothing works out how often a place is struck; report wording',
    },
  ],
};
