import { describe, expect, it } from 'vitest';
import { verdictsOf } from '../verdicts-of.ts';

/** A barn with rods of its own, fed from a house whose supply is earthed many times. */
const farm = (
  panel: string,
  feeder = 'no',
  region = 'uk',
) => `site: {name: Farm, region: ${region}, units: m, service: met, supply: tn-c-s}
electrodes: {rods: {kind: rods, count: 2, spacing: 3 m}}
supports: {tower: {kind: lattice tower, metal: galvanised steel, sections: bolted}}
antennas: none
bars: {met: {kind: main earthing bar}, bar: {kind: station ground bar}}
arresters: none
equipment: {cu: {kind: service panel, on: met}, db: {kind: sub-panel${panel}}, radio: {kind: transceiver}}
lines: {feeder: {kind: mains, path: [cu, db], protective_conductor: ${feeder}}, cord: {kind: mains, path: [db, radio], protective_conductor: yes}}
conductors: {a: {from: bar, to: rods}, b: {from: db, to: bar}, leg: {from: tower@base, to: rods}}
metalwork: none
`;
const rules = [
  'all-electrodes-one-system',
  'iec-antenna-electrode-to-main-bar',
  'uk-multiple-earth-rf-rod-bond',
] as const;

/** TT for a part of its own is the other accepted way (row uk-multiple-earth-rf-rod-bond, second-hand). */
describe('an earth of a TT part on a site with another supply', () => {
  it.each(rules)('%s cannot be told, and no bond to the main terminal is offered', (rule) => {
    expect(verdictsOf(rule, farm(', supply: tt'))).toEqual([
      expect.stringMatching(/^cannot tell rods.*: supply of its own$/),
    ]);
  });

  it.each(rules)('%s is not met where nobody typed such a supply', (rule) => {
    expect(verdictsOf(rule, farm(''))).toEqual([expect.stringMatching(/^not met rods.*: apart$/)]);
  });

  it('a protective conductor from the house makes it no supply of its own', () => {
    for (const rule of rules)
      expect(verdictsOf(rule, farm(', supply: tt', 'yes')).join()).not.toMatch(/supply of its own/);
  });
});
