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

/** A shack at the end of the garden on a TT panel of its own, with a mast and a bar that no wire ties to that panel. */
const garden = ({
  rods = '',
  lines = 'coax: {kind: coax, path: [beam, {bond: mast@0.3 m}, radio]}',
  bar = 'where: shack',
  supply = ', supply: tt',
  feeder = 'no',
  wires = '',
  region = 'uk',
  more = '',
}: Partial<
  Record<'rods' | 'lines' | 'bar' | 'supply' | 'feeder' | 'wires' | 'region' | 'more', string>
>) => `site: {name: Garden, region: ${region}, units: m, service: cu, supply: tn-c-s}
buildings: {house: {}, shack: {}, barn: {}}
electrodes: {tt-rod: {kind: rod}, mast-rod: {kind: rod}${rods}}
supports: {mast: {kind: mast, metal: galvanised steel}}
antennas: {beam: {kind: yagi, on: mast@top, touches_support: yes}}
bars: {bar: {kind: station ground bar, ${bar}}}
arresters: none
equipment:
  cu: {kind: service panel, where: house}
  db: {kind: sub-panel, where: shack${supply}}
  radio: {kind: transceiver, where: shack}
  router: {kind: router, where: house}
${more}
lines:
  feeder: {kind: mains, path: [cu, db], protective_conductor: ${feeder}}
  outlet: {kind: mains, path: [db, radio], protective_conductor: yes}
  ${lines}
conductors: {tt: {from: db, to: tt-rod}, lead: {from: mast@base, to: mast-rod}${wires}}
metalwork: none
`;

describe('loose metal beside a TT part', () => {
  const ofMast = (rule: string, text: string) => verdictsOf(rule, text).filter((v) => /mast-rod/.test(v));

  it.each(rules)(
    '%s cannot be told of a rod that a line ties to what is used there, and nothing is offered',
    (rule) => {
      expect(ofMast(rule, garden({}))).toEqual(['cannot tell mast-rod: which supply']);
      const { findings } = findingsOf(rule, garden({}));
      expect(findings.map((f) => f.change)).toEqual(findings.map(() => null));
    },
  );

  it.each(rules)('%s is not met of one that nothing ties to the panel, and of a site without such a panel', (rule) => {
    const alone = 'coax: {kind: coax, path: [beam, {bond: mast@0.3 m}]}';
    expect(ofMast(rule, garden({ lines: alone }))).toEqual(['not met mast-rod: apart']);
    expect(ofMast(rule, garden({ supply: '' }))).toEqual(['not met mast-rod: apart']);
    expect(ofMast(rule, garden({ feeder: 'yes' }))).toEqual(['not met mast-rod: apart']);
  });

  it('is asked of where nobody said whether the feeder brings the earth of the house along', () => {
    expect(ofMast('all-electrodes-one-system', garden({ feeder: 'unknown' }))).toEqual([
      'cannot tell mast-rod: which supply',
    ]);
  });

  it('counts what stands in the building of the panel, and not what stands in another', () => {
    const ofBar = (bar: string) => verdictsOf('panel-tied-to-service', garden({ bar })).filter((v) => / bar: /.test(v));
    expect(ofBar('where: shack')).toEqual(['cannot tell bar: which supply']);
    expect(ofBar('where: shack, bonded: no')).toEqual(['cannot tell bar: which supply']);
    expect(ofBar('where: house')).toEqual(['not met bar: apart']);
    expect(ofBar('where: house, bonded: no')).toEqual(['not met bar: apart']);
  });

  it('does not follow lines through what stands in the house', () => {
    const lines = 'lan: {kind: network, path: [router, radio]}\n  tv: {kind: coax, path: [mast@0.3 m, router]}';
    expect(ofMast('all-electrodes-one-system', garden({ lines }))).toEqual(['not met mast-rod: apart']);
  });

  it('is left out of ties by a shield alone', () => {
    const lines = 'coax: {kind: coax, path: [{bond: cu}, {bond: mast@0.3 m}, radio]}';
    expect(ofMast('screens-not-sole-bond', garden({ lines }))).toEqual(['cannot tell mast mast-rod: which supply']);
    expect(ofMast('screens-not-sole-bond', garden({ lines, supply: '' }))).toEqual(['not met mast-rod: shield only']);
  });
});

describe('a TT part', () => {
  const ofRod = (text: string) =>
    findingsOf('all-electrodes-one-system', text).findings.filter((f) => f.at.join() === 'tt-rod');

  it('with metal of the other supply in its building is to be looked at before anybody works there', () => {
    const tied = garden({ wires: ', tie: {from: bar, to: cu}' });
    expect(ofRod(tied).map((f) => [f.outcome, f.because.key, f.because.values])).toEqual([
      ['cannot tell', 'both in one building', { panel: 'db', beside: ['bar'] }],
    ]);
    const elsewhere = garden({ bar: 'where: barn', wires: ', tie: {from: bar, to: cu}' });
    expect(ofRod(elsewhere).map((f) => f.because.key)).toEqual(['supply of its own']);
  });

  it('may feed a panel of its own', () => {
    const more = '  more: {kind: sub-panel, where: shack}';
    const lines = 'on: {kind: mains, path: [db, more], protective_conductor: yes}';
    expect(ofRod(garden({ more, lines })).map((f) => f.because.key)).toEqual(['supply of its own']);
  });
});
