import { expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { readSite } from '../../src/site/read-site.ts';

/** A pipe that is said to be bonded, and what is clamped to it. */
const serviceBy = (conductors: string, bonded = 'yes') => {
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
  return bondingOf(site!, null).bonding.serviceBy;
};
const reachesService = (...asked: [string, string?]) => [...serviceBy(...asked).bonds].sort();
const lead = 'lead: {from: pole@base, to: pipe, wire: 10 AWG copper}';

test('the lead of a mast to a pipe that is bonded grounds the mast; it is not what bonds the pipe', () => {
  expect(reachesService(lead)).toEqual(expect.arrayContaining(['panel', 'pipe', 'pole']));
});

test('a pipe that is not bonded grounds nothing', () => {
  expect(reachesService(lead, 'no')).not.toContain('pole');
});

const tie = 'tie: {from: pipe, to: box, wire: 6 AWG copper}';

test('a wire to anything else may be the bond that was meant: where it leads nowhere the pipe hangs on the service perhaps', () => {
  const { bonds, perhaps } = serviceBy(`${lead}, ${tie}`);
  for (const id of ['pipe', 'pole', 'box']) expect([id, bonds.has(id), perhaps.has(id)]).toEqual([id, false, true]);
});

test('a wire that leads to the service is the bond, and no other is thought of', () => {
  const { perhaps, bonds } = serviceBy(`${lead}, ${tie}, home: {from: box, to: panel, wire: 6 AWG copper}`);
  expect(bonds.has('pole')).toBe(true);
  expect([...perhaps].filter((id) => !bonds.has(id))).toEqual([]);
});

test('a wire that leads nowhere and a pipe that nobody calls bonded stay apart for certain', () => {
  expect(serviceBy(`${lead}, ${tie}`, 'no').perhaps.has('box')).toBe(false);
});
