import { expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { readSite } from '../../src/site/read-site.ts';

/** R2 is said to be bonded; a wire, there or not, leads from it to a rod that is tied to nothing. */
const bondingWith = (present: string) => {
  const { site } = readSite(
    `
site: {name: Said, region: iec, units: m, service: panel}
electrodes: {R2: {kind: rod, bonded: yes}, R3: {kind: rod}}
equipment: {panel: {kind: service panel}}
conductors: {c: {from: R2, to: R3, wire: 16 mm2 copper, present: ${present}}}
`,
    'said.site.yaml',
  );
  return bondingOf(site!, null).bonding;
};

test('without a wire the bond is there, by something undescribed', () => {
  expect(bondingWith('no').unbondedElectrodes).toEqual(['R3']);
});

test('with a wire that wire is the bond, and it leads nowhere', () => {
  expect(bondingWith('yes').unbondedElectrodes).toEqual(['R2', 'R3']);
});

test('whether the wire is there decides which of the two it is', () => {
  const { unbondedElectrodes, perhapsUnbonded } = bondingWith('unknown');
  expect(unbondedElectrodes).not.toContain('R2');
  expect(perhapsUnbonded).toContainEqual({ electrode: 'R2', decidedBy: ['conductors.c.present'] });
});
