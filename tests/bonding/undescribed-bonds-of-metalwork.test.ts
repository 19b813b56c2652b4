import { expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { readSite } from '../../src/site/read-site.ts';

/** A pipe that is said to be bonded, and what is clamped to it. */
const reachesService = (conductors: string, bonded = 'yes') => {
  const { site } = readSite(
    `
site: {name: Said, region: us, units: ft, service: panel}
supports: {pole: {kind: roof mast, metal: galvanised steel}}
bars: {block: {kind: entry panel}}
equipment: {panel: {kind: service panel}, box: {kind: cabinet}}
metalwork: {pipe: {kind: water pipe, metal: copper, bonded: ${bonded}, continuous: yes}}
conductors: {${conductors}}
`,
    'said.site.yaml',
  );
  return [...bondingOf(site!, null).bonding.serviceBy.bonds].sort();
};
const lead = 'lead: {from: pole@base, to: pipe, wire: 10 AWG copper}';

test('the lead of a mast to a pipe that is bonded grounds the mast; it is not what bonds the pipe', () => {
  expect(reachesService(lead)).toEqual(expect.arrayContaining(['panel', 'pipe', 'pole']));
});

test('a pipe that is not bonded grounds nothing', () => {
  expect(reachesService(lead, 'no')).not.toContain('pole');
});

test('a wire to anything else is the bond, and where it leads nowhere the pipe hangs on nothing', () => {
  expect(reachesService(`${lead}, tie: {from: pipe, to: box, wire: 6 AWG copper}`)).not.toContain('pole');
});
