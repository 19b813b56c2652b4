import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-28',
  title: 'Attic antennas, good ground, still hit by the mains',
  sources: ['http://lists.contesting.com/archives/html/VHFcontesting/2010-08/msg00037.html'],
  grade: 'C',
  files: ['case-28.site.yaml'],
  must: [
    {
      says: 'Antennas indoors do not take away the mains: no protector at the service.',
      ask: { finding: 'service-surge-protector', at: 'main-panel' },
    },
    { says: 'The wires of the mains have no protector anywhere.', ask: { coreUnprotected: 'mains' } },
    { says: 'The mains reaches the radio.', ask: { reaches: ['hf-radio', 'outlet-radio'] } },
    { says: 'It reaches the amplifier.', ask: { reaches: ['six-metre-amplifier', 'outlet-amplifier'] } },
    { says: 'It reaches the computer.', ask: { reaches: ['computer', 'outlet-computer'] } },
    {
      says: 'The ground is a good one: plate, rods and service are one system.',
      ask: { together: ['wall-plate', 'rods', 'main-panel'] },
    },
    {
      says: 'Radio and amplifier are on the plate.',
      ask: { together: ['hf-radio', 'six-metre-amplifier', 'wall-plate'] },
    },
  ],
  mustNot: [
    {
      says: 'Bonded rods are not reported as apart.',
      ask: { finding: 'all-electrodes-one-system', at: 'rods' },
    },
    { says: 'Nor as unbonded.', ask: { unbonded: 'rods' } },
    { says: 'A 10 ft rod is long enough.', ask: { finding: 'rod-length-us', at: 'rods' } },
    {
      says: 'Coax from the attic never crosses an outer wall.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax' },
    },
    {
      says: 'So no arrester is missing at an entry.',
      ask: { finding: 'arrester-on-every-feed-line', at: 'coax' },
    },
    { says: 'The plate is tied to the service.', ask: { finding: 'panel-tied-to-service', at: 'wall-plate' } },
    {
      says: 'How far the rods stand from each other was not told.',
      ask: { finding: 'rod-spacing-minimum', at: 'rods' },
    },
    { says: 'The radio is on the plate.', ask: { finding: 'no-orphan-equipment', at: 'hf-radio' } },
  ],
  notYet: [
    {
      sentence: 'Lamps blew, several outlets arced, transformers failed in the area.',
      because: 'needs the strike calculation with the world outside the site',
    },
  ],
};
