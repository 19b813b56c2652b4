import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-01',
  title: 'Tower at the shack, mains at the diagonally opposite corner',
  sources: [
    'http://lists.contesting.com/_towertalk/1998-06/msg00194.html',
    'http://lists.contesting.com/_towertalk/1998-06/msg00184.html',
  ],
  grade: 'A',
  files: ['case-01.site.yaml', 'case-01-bond.site.yaml', 'case-01-entry.site.yaml'],
  must: [
    { says: 'The bond is missing: tower and service are two systems.', ask: { apart: ['tower', 'main-panel'] } },
    { says: 'The ground of the tower does not reach the service.', ask: { unbonded: 'tower-ground' } },
    {
      says: 'That is a hazard, not a matter of taste.',
      ask: { finding: 'all-electrodes-one-system', at: 'tower-ground', severity: 'hazard' },
    },
    {
      says: 'The electrode of the service was not spoken of.',
      ask: { finding: 'service-electrode-known', at: 'main-panel', outcome: 'cannot tell' },
    },
    {
      says: 'Bonded around the house, tower and service are one system.',
      ask: { together: ['tower', 'tower-ground', 'main-panel'] },
      ofFile: 'case-01-bond.site.yaml',
    },
    {
      says: 'The way is 90 to 100 ft; #6 straight, 95 ft, comes to 55 uH.',
      ask: { way: ['tower-ground', 'main-panel'], lengthM: [27.4, 30.5], inductanceH: [49.5e-6, 60.5e-6] },
      ofFile: 'case-01-bond.site.yaml',
    },
    {
      says: 'A bond that long reduces the difference and does not equalise it.',
      ask: { finding: 'bond-between-groups-long', at: 'long-bond' },
      ofFile: 'case-01-bond.site.yaml',
    },
    {
      says: 'With the entry panel at the service and the flashing, all of it is one system.',
      ask: { together: ['tower', 'tower-ground', 'entry', 'main-panel'] },
      ofFile: 'case-01-entry.site.yaml',
    },
  ],
  mustNot: [
    { says: 'A feed line is no bond.', ask: { together: ['tower', 'main-panel'] } },
    {
      says: 'Where the shield is bonded on the way in was not told: it may not be called unbonded.',
      ask: { finding: 'shield-bonded-at-entry', at: 'feed' },
    },
    {
      says: 'The service may have its electrode: it may not be called absent.',
      ask: { finding: 'service-electrode-known', at: 'main-panel' },
    },
    {
      says: 'A long bond is still a bond.',
      ask: { unbonded: 'tower-ground' },
      ofFile: 'case-01-bond.site.yaml',
    },
    {
      says: 'It satisfies the clause whatever its length.',
      ask: { finding: 'all-electrodes-one-system', at: 'tower-ground' },
      ofFile: 'case-01-bond.site.yaml',
    },
    {
      says: 'Length does not make #6 too small.',
      ask: { finding: 'antenna-electrode-bond-size', at: 'long-bond' },
      ofFile: 'case-01-bond.site.yaml',
    },
    {
      says: 'An entry panel tied to the service is not reported as apart from it.',
      ask: { finding: 'panel-tied-to-service', at: 'entry' },
      ofFile: 'case-01-entry.site.yaml',
    },
    {
      says: 'The shield is bonded on the panel before it goes inside.',
      ask: { finding: 'shield-bonded-at-entry', at: 'feed' },
      ofFile: 'case-01-entry.site.yaml',
    },
  ],
  notYet: [
    { sentence: 'About 55 kV for each kA/us in the bond.', because: 'needs the strike calculation' },
    {
      sentence: 'First the entry panel at the service, second the bond with rods between, third none.',
      because: 'proposals of works come later',
    },
    {
      sentence: 'Never run the cables under the eaves as a big loop; tight to the flashing they make none.',
      because: 'the report gives no positions to work a loop out of; needs the strike calculation',
    },
  ],
};
