import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-52',
  title: 'Wood pole with a link dish: arc to the metal siding',
  sources: ['https://www.radioworld.com/tech-and-gear/tech-tips/what-happens-when-lightning-hits-a-case-study'],
  grade: 'C',
  files: ['case-52.site.yaml'],
  must: [
    {
      says: 'The shield of the line is not bonded where it comes in.',
      ask: { finding: 'shield-bonded-at-entry', at: 'link-line' },
    },
    { says: 'The siding is not bonded.', ask: { finding: 'metalwork-bonded', at: 'siding' } },
    { says: 'No metal ties the dish to the siding that it arced to.', ask: { noWay: ['link-dish', 'siding'] } },
    { says: 'The line goes straight to the equipment.', ask: { reaches: ['link-radio', 'link-line'] } },
    {
      says: 'Where the service is earthed was not told.',
      ask: { finding: 'service-electrode-known', outcome: 'cannot tell' },
    },
  ],
  mustNot: [
    { says: 'A wood pole is no metal mast.', ask: { finding: 'mast-grounded', at: 'pole' } },
    { says: 'The pole does not tie the dish to anything.', ask: { together: ['link-dish', 'siding'] } },
    {
      says: 'A down conductor that is not there is not measured.',
      ask: { finding: 'mast-ground-size', at: 'pole-wire' },
    },
  ],
  notYet: [
    {
      sentence: 'No down conductor on the pole.',
      because: 'no rule asks for one on a pole that is not of metal',
    },
    {
      sentence: 'The remote transmitter was untouched; practically all studio equipment was destroyed.',
      because: 'needs the strike calculation',
    },
  ],
};
