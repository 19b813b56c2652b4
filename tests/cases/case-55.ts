import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-55',
  title: "Landlord's grounding standard and a small bus bar",
  sources: ['https://www.mail-archive.com/af@afmug.com/msg27194.html'],
  grade: 'A',
  files: ['case-55.site.yaml', 'case-55-after.site.yaml'],
  must: [
    {
      says: 'Electrically it stands: the protectors and both bars are one.',
      ask: { together: ['data-protectors', 'protector-bar', 'master-bar'] },
    },
    { says: 'The #6 is the way to the master bar.', ask: { way: ['protector-bar', 'master-bar'] } },
    {
      says: 'What the master bar is tied to was not told: whether the protectors reach an electrode cannot be told.',
      ask: { finding: 'arrester-bonded', at: 'data-protectors', outcome: 'cannot tell' },
    },
    {
      says: 'Done again with #2 and two-hole lugs it is still one.',
      ask: { together: ['data-protectors', 'protector-bar', 'master-bar'] },
      ofFile: 'case-55-after.site.yaml',
    },
    {
      says: "Not compliant with the landlord's standard: a #6 between bars, where #2 is asked.",
      ask: { finding: 'own-bar-to-master-bar', at: 'bar-lead' },
    },
    {
      says: 'Whether its lugs have two holes was not told.',
      ask: { finding: 'own-lugs', at: 'bar-lead:protector-bar', outcome: 'cannot tell' },
    },
    {
      says: 'Done again it meets both.',
      ask: { finding: 'own-bar-to-master-bar', at: 'bar-lead', outcome: 'met' },
      ofFile: 'case-55-after.site.yaml',
    },
    {
      says: 'So do the lugs.',
      ask: { finding: 'own-lugs', at: 'lug-1', outcome: 'met' },
      ofFile: 'case-55-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'A #6 between bars breaks no clause of the code on the size of an electrode bond.',
      ask: { finding: 'antenna-electrode-bond-size', at: 'bar-lead' },
    },
    { says: 'Nor one on the size of a mast lead.', ask: { finding: 'mast-ground-size', at: 'bar-lead' } },
    {
      says: 'The protectors are bolted to a bar: they are not without a bond.',
      ask: { finding: 'arrester-bonded', at: 'data-protectors' },
    },
    {
      says: 'Two-hole lugs are a method that the code allows.',
      ask: { finding: 'joint-method-allowed', at: 'lug-1' },
      ofFile: 'case-55-after.site.yaml',
    },
  ],
  notYet: [{ sentence: 'Redo because the contract says so.', because: 'proposals of works come later' }],
};
