import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-62',
  title: 'Bronze clamp on a galvanised leg',
  sources: [
    'http://lists.contesting.com/pipermail/towertalk/1998-September/018616.html',
    'http://lists.contesting.com/pipermail/towertalk/1998-November/020899.html',
    'http://lists.contesting.com/pipermail/towertalk/2008-January/098822.html',
  ],
  grade: 'B',
  dissent:
    'Whether a stainless shim helps: it roughly halves the step, but some alloys are nobler than copper. Agreed by all: copper straight on zinc eats the zinc.',
  files: ['case-62.site.yaml', 'case-62-copper.site.yaml', 'case-62-shim.site.yaml'],
  must: [
    {
      says: 'Bronze on zinc is a pair far apart: a suggestion.',
      ask: { finding: 'galvanic-pair', at: 'leg-lead:from', severity: 'advice' },
    },
    {
      says: 'Copper straight on zinc eats the zinc.',
      ask: { finding: 'galvanic-pair', at: 'leg-lead:from' },
      ofFile: 'case-62-copper.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'It is a suggestion, not a failure.',
      ask: { finding: 'galvanic-pair', at: 'leg-lead:from', severity: 'defect' },
    },
    { says: 'And no hazard.', ask: { finding: 'galvanic-pair', at: 'leg-lead:from', severity: 'hazard' } },
    {
      says: 'A clamp is an allowed method; whether this one is listed was not told.',
      ask: { finding: 'joint-method-allowed', at: 'leg-lead:from' },
    },
    {
      says: 'Nobody said that it is corroded.',
      ask: { finding: 'condition-sound', at: 'leg-lead:from' },
    },
    {
      says: 'A shim of stainless leaves a step to the zinc: it does not make the pair one of like metals.',
      ask: { finding: 'galvanic-pair', at: 'leg-lead:from', outcome: 'met' },
      ofFile: 'case-62-shim.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Keep water out, keep the area of the less noble metal large, use tinned or listed parts.',
      because: 'proposals of works come later',
    },
    { sentence: 'Never weld a load-bearing leg.', because: 'no rule speaks of what carries load' },
    {
      sentence: 'The shim roughly halves the step and wears in place of the zinc.',
      because: 'disputed: the range of stainless reaches past copper',
    },
    { sentence: 'A listed clamp is not for that free of corrosion.', because: 'report wording' },
  ],
};
