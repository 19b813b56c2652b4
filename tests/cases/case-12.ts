import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-12',
  title: 'Basement shack, every service at one wall',
  sources: ['http://lists.contesting.com/archives/html/Towertalk/2016-08/msg00363.html'],
  grade: 'C',
  files: ['case-12.site.yaml', 'case-12-sand.site.yaml', 'case-12-after.site.yaml'],
  must: [
    {
      says: 'The rod outside wiggles: a field check.',
      ask: { finding: 'condition-sound', at: 'old-rod' },
    },
    { says: 'Whether it is tied to anything was not told.', ask: { perhapsUnbonded: 'old-rod' } },
    {
      says: 'The loop floats: nothing drains its core.',
      ask: { finding: 'core-static-drain', at: 'loop-coax' },
    },
    { says: 'There is no DC path.', ask: { coreUndrained: 'loop-coax' } },
    {
      says: 'The ground screen has to be bonded in; whether it is was not told.',
      ask: { perhapsUnbonded: 'ground-screen' },
    },
    {
      says: 'In sand of 1,000 ohm m one 8 ft rod comes to 400 ohm.',
      ask: { earthOhm: 'old-rod', within: [390, 410] },
      ofFile: 'case-12-sand.site.yaml',
    },
    {
      says: 'With the small steps, screen, rods, panel and service are one system.',
      ask: { together: ['ground-screen', 'new-rods', 'entry', 'main-panel'] },
      ofFile: 'case-12-after.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'A rod that may be tied is not unbonded for certain.',
      ask: { finding: 'all-electrodes-one-system', at: 'old-rod' },
    },
    { says: 'Nor is the ground screen.', ask: { finding: 'all-electrodes-one-system', at: 'ground-screen' } },
    {
      says: 'Whether the service has its electrode was not told: it may not be called absent.',
      ask: { finding: 'service-electrode-known', at: 'main-panel' },
    },
    {
      says: 'The length of the old rod was not told.',
      ask: { finding: 'rod-length-us', at: 'old-rod' },
    },
    {
      says: 'With the bleed the loop no longer floats.',
      ask: { coreUndrained: 'loop-coax' },
      ofFile: 'case-12-after.site.yaml',
    },
    {
      says: 'Nor is that reported.',
      ask: { finding: 'core-static-drain', at: 'loop-coax' },
      ofFile: 'case-12-after.site.yaml',
    },
    {
      says: 'The shield is bonded on the entry panel.',
      ask: { finding: 'shield-bonded-at-entry', at: 'loop-coax' },
      ofFile: 'case-12-after.site.yaml',
    },
    {
      says: 'An entry panel tied to the service is not reported as apart from it.',
      ask: { finding: 'panel-tied-to-service', at: 'entry' },
      ofFile: 'case-12-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Everything enters at one wall: a good topology, and the place for the shack.',
      because: 'nothing scores a topology; proposals of works come later',
    },
    {
      sentence: 'Layers of topsoil, sand and rock are accepted.',
      because: 'their resistivities were not told: that the file is read says it, a figure cannot',
    },
    { sentence: 'Two towers of 50 ft later.', because: 'nothing but their height was told' },
  ],
};
