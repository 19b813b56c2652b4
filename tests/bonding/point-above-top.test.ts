import { expect, it } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { readSite } from '../../src/site/read-site.ts';

it('a point typed above the top of its support is taken at the top', () => {
  const text = (at: string) => `
site: {units: m, service: none}
electrodes: {rod: {kind: rod}}
supports: {mast: {kind: mast, height: 12 m}}
antennas: {a: {kind: yagi, on: ${at}, touches_support: yes}}
conductors: {lead: {from: mast@base, to: rod, length: 1 m}}
`;
  const wayOf = (at: string) => {
    const { bonding } = bondingOf(readSite(text(at), 'x').site!, null);
    return bonding.groups.map((g) => g.parts);
  };
  expect(wayOf('mast@15 m')).toEqual(wayOf('mast@12 m'));
});
