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
  notYet: [
    {
      sentence: "Not compliant with the landlord's standard: #2 and two-hole lugs.",
      because: "the owner's own limits are not judged yet; they stand in case-55.standard.yaml",
    },
    {
      sentence: 'Rule sets selectable per site; same fact, two verdicts.',
      because: "needs the landlord's limits judged beside the code",
    },
    { sentence: 'Redo because the contract says so.', because: 'proposals of works come later' },
  ],
};
