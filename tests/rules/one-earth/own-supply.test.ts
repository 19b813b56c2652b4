import { describe, expect, it } from 'vitest';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

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

  it('its bar is not to be tied either, and a shield between the two is found without offering a bond', () => {
    const bar = (panel: string) => verdictsOf('panel-tied-to-service', farm(panel)).filter((v) => / bar: /.test(v));
    expect(bar(', supply: tt')).toEqual(['cannot tell bar: supply of its own']);
    expect(bar('')).toEqual(['not met bar: apart']);
    const screened = (panel: string) =>
      farm(panel).replace('lines: {', 'lines: {coax: {kind: coax, path: [bar, {bond: met}]}, ');
    const changes = (panel: string) =>
      findingsOf('screens-not-sole-bond', screened(panel))
        .findings.filter((f) => f.outcome === 'not met')
        .map((f) => f.change);
    expect(new Set(changes(', supply: tt'))).toEqual(new Set([null]));
    expect(changes('').length).toBeGreaterThan(0);
    expect(changes('')).not.toContain(null);
  });

  it('a protective conductor from the house makes it no supply of its own', () => {
    for (const rule of rules)
      expect(verdictsOf(rule, farm(', supply: tt', 'yes')).join()).not.toMatch(/supply of its own/);
  });
});
