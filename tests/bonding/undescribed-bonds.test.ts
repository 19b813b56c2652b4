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

/** A bar that is said to be bonded, on which only the lead of a radio lands. */
const barBy = (bar: string, more = '') => {
  const { site } = readSite(
    `
site: {name: Said, region: us, units: ft, service: panel}
supports: {tower: {kind: lattice tower, metal: galvanised steel}}
bars: {entry: {kind: entry panel, ${bar}}}
equipment: {panel: {kind: service panel}, radio: {kind: transceiver}}
conductors: {lead: {from: radio, to: entry, wire: 6 AWG copper}${more}}
`,
    'said.site.yaml',
  );
  return bondingOf(site!, null).bonding;
};

test('a bar that is said to be bonded is tied perhaps, where its wires lead to no service', () => {
  const { bonds, perhaps } = barBy('bonded: yes').serviceBy;
  expect([bonds.has('entry'), perhaps.has('entry')]).toEqual([false, true]);
  for (const bonded of ['bonded: no', 'bonded: unknown, present: no'])
    expect(barBy(bonded).serviceBy.perhaps.has('entry')).toBe(false);
  const { serviceBy } = barBy('bonded: yes', ', home: {from: entry, to: panel, wire: 6 AWG copper}');
  expect([...serviceBy.perhaps].filter((id) => !serviceBy.bonds.has(id))).toEqual([]);
  expect(serviceBy.bonds.has('entry')).toBe(true);
});

test('what a bar is on is named: its wires do not undo that bond', () => {
  const { groupOf } = barBy('on: tower@base, bonded: yes');
  expect(groupOf.get('entry')).toBe(groupOf.get('tower'));
  expect(barBy('on: tower@base, bonded: no').groupOf.get('entry')).not.toBe(
    barBy('on: tower@base, bonded: no').groupOf.get('tower'),
  );
});
