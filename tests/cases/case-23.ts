import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-23',
  title: 'Strike with everything on the tower unplugged',
  sources: ['http://lists.contesting.com/_towertalk/2003-08/msg00848.html'],
  grade: 'A',
  files: ['case-23.site.yaml'],
  must: [
    {
      says: 'The rotators keep their cable at the tower top, unplugged below or not.',
      ask: { reaches: ['rotators', 'rotor'], state: 'unplugged' },
    },
    {
      says: 'So does the remote switch.',
      ask: { reaches: ['remote-switch', 'switch-control'], state: 'unplugged' },
    },
    { says: 'So does the relay box.', ask: { reaches: ['relay-box', 'relay-control'], state: 'unplugged' } },
    {
      says: 'In the house the network still reaches the computer.',
      ask: { reaches: ['computer', 'lan'], state: 'unplugged' },
    },
    {
      says: 'Cable TV still reaches the modem.',
      ask: { reaches: ['cable-modem', 'tv'], state: 'unplugged' },
    },
    { says: 'And the telephone line its sets.', ask: { reaches: ['phones', 'phone'], state: 'unplugged' } },
    {
      says: 'Where the pulled ends hang was not told.',
      ask: { finding: 'spare-and-disconnected-lines', at: 'rotor', outcome: 'cannot tell' },
      inState: 'unplugged',
    },
  ],
  mustNot: [
    {
      says: 'The service has its protector.',
      ask: { finding: 'service-surge-protector', at: 'meter' },
    },
    {
      says: 'The bonding is not what failed: no electrode is found apart.',
      ask: { finding: 'all-electrodes-one-system' },
    },
    {
      says: 'The electrode of the service was not spoken of.',
      ask: { finding: 'service-electrode-known', at: 'meter' },
    },
    {
      says: 'What grounds the tower was not told: it may not be called ungrounded.',
      ask: { finding: 'mast-grounded', at: 'tower' },
    },
    {
      says: 'No line of the tower reaches the computer.',
      ask: { reaches: ['computer', 'rotor'] },
    },
    {
      says: 'What ties the entry panel was not told.',
      ask: { finding: 'panel-tied-to-service', at: 'entry' },
    },
  ],
  notYet: [
    {
      sentence: 'Electronics on the tower are listed as unprotected.',
      because: 'protectors at the tower were not spoken of, and no question asks for machines without one',
    },
    {
      sentence: 'The voltage induced in the network cables did the rest: a risk by loop area.',
      because: 'needs positions and the strike calculation',
    },
    {
      sentence: 'Disconnecting limited the damage, the protector probably helped.',
      because: 'needs the strike calculation',
    },
  ],
};
