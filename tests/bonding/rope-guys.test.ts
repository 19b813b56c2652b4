import { expect, it } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { readSite } from '../../src/site/read-site.ts';

const guyed = (metal: string) => `
site: {name: Guyed, units: ft, service: none}
electrodes: {tower-rod: {kind: rod}, anchor-rod: {kind: rod}}
supports:
  tower: {kind: lattice tower, height: 40 ft, guys: {g1: {anchor: [30, 0], metal: ${metal}, insulators: no}}}
conductors:
  lead: {from: tower@base, to: tower-rod}
  anchor-lead: {from: g1@anchor, to: anchor-rod}
`;

it.each([
  ['galvanised steel', 1],
  ['none', 0],
])('a guy of metal %s makes %i bridges between the tower and the rod at its anchor', (metal, bridges) => {
  const { site, problems } = readSite(guyed(metal), 'guyed');
  expect(problems).toEqual([]);
  expect(bondingOf(site!, null).bonding.bridges.length).toBe(bridges);
});
