import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** IEC 60364-5-54:2011 542.3 (from memory): 6 mm² copper or 50 mm² steel, 16 mm² with lightning protection, 25 mm² in soil. */
describe('earthing-conductor-size-iec', () => {
  const rule = 'earthing-conductor-size-iec';
  const wire = (
    text: string,
    says = ', buried: no',
    header = '',
  ) => `site: {name: Bar, region: iec, units: m, service: main${header}}
electrodes: {R: {kind: rod}}
bars: {main: {kind: main earthing bar}}
conductors: {c: {from: main, to: R, wire: ${text}${says}}}
`;

  it('asks 6 mm² copper or 50 mm² steel above ground', () => {
    expect(verdictsOf(rule, wire('6 mm2 copper'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, wire('10 AWG copper'))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, wire('50 mm2 galvanised steel'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, wire('49 mm2 galvanised steel'))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, wire('16 mm2 aluminium'))).toEqual(['cannot tell c: metal not listed']);
    expect(verdictsOf(rule, wire('unknown'))).toEqual(['cannot tell c: size unknown']);
  });

  it('asks 25 mm² of bare copper in soil, and whether it lies there only where that matters', () => {
    expect(verdictsOf(rule, wire('25 mm2 copper', ', buried: 0.5 m'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, wire('24 mm2 bare copper', ', buried: 0.5 m'))).toEqual(['not met c: small']);
    // nobody said whether it is covered
    expect(verdictsOf(rule, wire('24 mm2 copper', ', buried: 0.5 m'))).toEqual(['cannot tell c: cover unknown']);
    expect(verdictsOf(rule, wire('5.9 mm2 copper', ', buried: 0.5 m'))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, wire('16 mm2 copper insulated', ', buried: 0.5 m'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, wire('16 mm2 copper', ''))).toEqual(['cannot tell c: soil unknown']);
    expect(verdictsOf(rule, wire('4 mm2 copper', ''))).toEqual(['not met c: small']);
  });

  it('asks 16 mm² where lightning protection shares it', () => {
    expect(verdictsOf(rule, wire('16 mm2 copper', ', buried: no', ', claims: class III'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, wire('10 mm2 copper', ', buried: no', ', claims: class III'))).toEqual([
      'not met c: small',
    ]);
  });

  eitherSide(rule, wire, [
    ['6 mm2 copper', '5.9 mm2 copper'],
    ['12 kcmil copper', '11.7 kcmil copper'],
    ['50 mm2 galvanised steel', '49 mm2 galvanised steel'],
    ['99 kcmil galvanised steel', '98 kcmil galvanised steel'],
  ]);
  eitherSide(rule, (figure) => wire(figure, ', buried: no', ', claims: class III'), [
    ['16 mm2 copper', '15.8 mm2 copper'],
    ['32 kcmil copper', '31 kcmil copper'],
  ]);
  eitherSide(rule, (figure) => wire(figure, ', buried: 0.5 m'), [
    ['25 mm2 bare copper', '24.7 mm2 bare copper'],
    ['50 kcmil bare copper', '49 kcmil bare copper'],
  ]);

  it('is not asked where nothing leads from the bar to an electrode', () => {
    expect(
      findingsOf(rule, wire('6 mm2 copper').replace('from: main', 'from: R').replace('to: R', 'to: unknown')).outcome,
    ).toBe('not applicable');
  });

  it('is not asked of an edition before 2011, and main-bonding-size-iec does not ask of the same wire', () => {
    const old = ', code: {document: IEC 60364-5-54, edition: 2002}';
    expect(findingsOf(rule, wire('2.5 mm2 copper', ', buried: no', old)).outcome).toBe('not applicable');
    expect(verdictsOf('main-bonding-size-iec', wire('4 mm2 copper'))).toEqual([]);
  });
});

/** IEC 60728-11 (second-hand): 4 mm² in the open, 2.5 mm² protected. */
describe('antenna-bonding-size-iec', () => {
  const rule = 'antenna-bonding-size-iec';
  const lead = (wire: string, says = '', kind = 'gas tube') => `site: {name: Lead, region: iec, service: unknown}
bars: {main: {kind: main earthing bar}}
arresters: {a1: {kind: ${kind}}}
conductors: {c: {from: a1, to: main, wire: ${wire}${says}}}
`;

  it('asks by how the bond runs', () => {
    expect(verdictsOf(rule, lead('4 mm2 copper'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, lead('12 AWG copper', ', runs: open'))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, lead('2.5 mm2 copper', ', runs: in conduit'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, lead('14 AWG copper', ', enclosure: plastic conduit'))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, lead('2.5 mm2 copper'))).toEqual(['cannot tell c: shelter unknown']);
    expect(verdictsOf(rule, lead('2 mm2 copper'))).toEqual(['not met c: small']);
  });

  eitherSide(rule, (figure) => lead(figure, ', runs: open'), [
    ['4 mm2 copper', '3.9 mm2 copper'],
    ['8 kcmil copper', '7.7 kcmil copper'],
  ]);
  eitherSide(rule, (figure) => lead(figure, ', runs: in conduit'), [
    ['2.5 mm2 copper', '2.4 mm2 copper'],
    ['5 kcmil copper', '4.8 kcmil copper'],
  ]);

  it('has no word on protectors of mains and telephone', () => {
    expect(findingsOf(rule, lead('1.5 mm2 copper', '', 'mains protector')).outcome).toBe('not applicable');
    expect(findingsOf(rule, lead('1.5 mm2 copper', '', 'telephone protector')).outcome).toBe('not applicable');
  });
});

/** IEC 62305-4:2010 Table 1 (second-hand): 16, 6 and 1 mm² copper by class. */
describe('surge-device-conductor', () => {
  const rule = 'surge-device-conductor';
  const lead = (wire: string, says = '') => `site: {name: Mains, region: iec, service: unknown}
bars: {main: {kind: main earthing bar}}
arresters: {spd: {kind: mains protector${says}}}
conductors: {c: {from: spd, to: main, wire: ${wire}}}
`;
  const ofClass = (name: string) => (figure: string) => lead(figure, `, test_class: ${name}`);

  eitherSide(rule, ofClass('I'), [
    ['16 mm2 copper', '15.8 mm2 copper'],
    ['32 kcmil copper', '31 kcmil copper'],
  ]);
  eitherSide(rule, ofClass('II'), [
    ['6 mm2 copper', '5.9 mm2 copper'],
    ['12 kcmil copper', '11.7 kcmil copper'],
  ]);
  eitherSide(rule, ofClass('III'), [
    ['1 mm2 copper', '0.98 mm2 copper'],
    ['17 AWG copper', '18 AWG copper'],
  ]);

  it('asks it of the lead, whatever its owner calls that', () => {
    const called = (role: string) =>
      lead('10 mm2 copper', ', test_class: I').replace('to: main,', `to: main, role: ${role},`);
    expect(verdictsOf(rule, called('protective'))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, called('bond'))).toEqual(['not met c: small']);
  });

  it('asks the class only where it matters', () => {
    expect(verdictsOf(rule, lead('16 mm2 copper'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, lead('10 AWG copper', ', test_class: II'))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, lead('0.9 mm2 copper'))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, lead('6 mm2 copper'))).toEqual(['cannot tell c: class unknown']);
    const tube = lead('16 mm2 copper').replace('mains protector', 'gas tube');
    expect(findingsOf(rule, tube).outcome).toBe('not applicable');
  });
});

/** IEC 60364-5-54 544.1 (second-hand): 6 mm² copper, 16 mm² aluminium, 50 mm² steel; BS 7671 544.1 on TN-C-S: 10 mm². */
describe('main-bonding-size-iec', () => {
  const rule = 'main-bonding-size-iec';
  const bond = (wire: string, header = 'region: iec', to = 'main') => `site: {name: Bond, ${header}, service: unknown}
bars: {main: {kind: main earthing bar}, desk: {kind: station ground bar}}
equipment: {radio: {kind: transceiver}}
metalwork: {pipe: {kind: water pipe}}
conductors: {c: {from: ${to === 'main' ? 'pipe' : 'radio'}, to: ${to}, wire: ${wire}}}
`;

  eitherSide(rule, bond, [
    ['6 mm2 copper', '5.9 mm2 copper'],
    ['12 kcmil copper', '11.7 kcmil copper'],
    ['16 mm2 aluminium', '15.8 mm2 aluminium'],
    ['32 kcmil aluminium', '31 kcmil aluminium'],
    ['50 mm2 galvanised steel', '49 mm2 galvanised steel'],
    ['99 kcmil galvanised steel', '98 kcmil galvanised steel'],
  ]);
  eitherSide(rule, (figure) => bond(figure, 'region: uk, supply: tn-c-s'), [
    ['10 mm2 copper', '9.9 mm2 copper'],
    ['20 kcmil copper', '19.5 kcmil copper'],
  ]);

  it('asks 6 mm² of a TN-S supply in the United Kingdom, and of a TN-C-S supply elsewhere', () => {
    expect(verdictsOf(rule, bond('6 mm2 copper', 'region: uk, supply: tn-s'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, bond('6 mm2 copper', 'region: iec, supply: tn-c-s'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, bond('6 mm2 copper', 'region: uk, supply: tn-c-s'))).toEqual(['not met c: small']);
  });

  it('cannot tell of 6 mm² in the United Kingdom while nobody knows how the supply is earthed', () => {
    const uk = (wire: string) => verdictsOf(rule, bond(wire, 'region: uk'));
    expect(uk('6 mm2 copper')).toEqual(['cannot tell c: supply unknown']);
    expect(uk('10 mm2 copper')).toEqual(['met c: enough']);
    expect(uk('5.9 mm2 copper')).toEqual(['not met c: small']);
    expect(uk('16 mm2 aluminium')).toEqual(['met c: enough']);
    expect(verdictsOf(rule, bond('6 mm2 copper', 'region: iec'))).toEqual(['met c: enough']);
  });

  it('asks the same of the wire from the main bar to a rod on a TN-C-S supply of the United Kingdom: a hazard', () => {
    const rod = (wire: string, header: string) =>
      `site: {name: Rod, ${header}, service: main}
electrodes: {R: {kind: rod}}
bars: {main: {kind: main earthing bar}}
conductors: {c: {from: main, to: R, buried: no, wire: ${wire}}}
`;
    const uk = (wire: string, supply: string) => findingsOf(rule, rod(wire, `region: uk, supply: ${supply}`));
    const said = (wire: string, supply: string) => verdictsOf(rule, rod(wire, `region: uk, supply: ${supply}`));
    expect(said('6 mm2 copper', 'tn-c-s')).toEqual(['not met c: small']);
    expect(uk('6 mm2 copper', 'tn-c-s').findings[0]!.severity).toBe('hazard');
    expect(said('10 mm2 copper', 'tn-c-s')).toEqual(['met c: enough']);
    expect(said('6 mm2 copper', 'unknown')).toEqual(['cannot tell c: supply unknown']);
    // too thin on any supply: the clause on earthing conductors says so
    expect(uk('4 mm2 copper', 'unknown').findings[0]!.under).toBe('earthing-conductor-size-iec:c');
    expect(said('6 mm2 copper', 'tn-s')).toEqual([]);
    expect(said('6 mm2 copper', 'tt')).toEqual([]);
    expect(verdictsOf(rule, rod('6 mm2 copper', 'region: iec, supply: tn-c-s'))).toEqual([]);
  });

  it('cannot tell without a size; takes the bond of a radio for no main bond', () => {
    expect(verdictsOf(rule, bond('unknown'))).toEqual(['cannot tell c: size unknown']);
    expect(findingsOf(rule, bond('2.5 mm2 copper', 'region: iec', 'desk')).outcome).toBe('not applicable');
  });
});

/** IEC 60728-11 (second-hand): at least 2 m below the edge of the roof and at most 1.5 m from the wall; both must hold. */
describe('an antenna on the face of a building', () => {
  const arm = (
    below: string,
    out: string,
    lead = 'none',
    kind = 'building face',
  ) => `site: {name: Balcony, region: iec, units: m, service: unknown}
electrodes: {E1: {kind: rod}}
supports: {arm: {kind: ${kind}, metal: aluminium}}
antennas: {whip: {kind: vertical, on: arm, below_roof: ${below}, from_wall: ${out}}}
conductors: ${lead}
`;
  const earthed = (below: string, out: string) => verdictsOf('iec-mast-earthed', arm(below, out));

  it('needs no earthing conductor inside the zone', () => {
    expect(earthed('2 m', '1.5 m')).toEqual(['met arm: exempt']);
    expect(earthed('6 ft 7 in', '59 in')).toEqual(['met arm: exempt']);
  });

  it('needs one when either limit is passed', () => {
    expect(earthed('1.9 m', '1 m')).toEqual(['not met arm: no way']);
    expect(earthed('3 m', '1.6 m')).toEqual(['not met arm: no way']);
    expect(earthed('unknown', '61 in')).toEqual(['not met arm: no way']);
  });

  it('cannot be told while one of the two is not known', () => {
    expect(earthed('3 m', 'unknown')).toEqual(['cannot tell arm: on facade']);
  });

  it('on a short mast counts from what somebody measured, and from nothing else', () => {
    const onMast = (below: string, out: string) => verdictsOf('iec-mast-earthed', arm(below, out, 'none', 'mast'));
    expect(onMast('2 m', '1.5 m')).toEqual(['met arm: exempt']);
    expect(onMast('2 m', '1.6 m')).toEqual(['not met arm: no way']);
    expect(onMast('2 m', 'unknown')).toEqual(['cannot tell arm: on facade']);
    expect(onMast('unknown', 'unknown')).toEqual(['not met arm: no way']);
    const lead = arm('3 m', '1 m', '{c: {from: arm, to: E1, wire: 4 mm2 copper}}', 'mast');
    expect(verdictsOf('antenna-earthing-size-iec', lead)).toEqual(['met c: exempt']);
  });

  it('inside the zone its lead is judged as a bond alone', () => {
    const lead = (wire: string) => arm('3 m', '1 m', `{c: {from: arm, to: E1, wire: ${wire}}}`);
    expect(verdictsOf('antenna-earthing-size-iec', lead('4 mm2 copper'))).toEqual(['met c: exempt']);
    expect(verdictsOf('antenna-bonding-size-iec', lead('4 mm2 copper'))).toEqual(['met c: enough']);
    expect(verdictsOf('antenna-bonding-size-iec', lead('2 mm2 copper'))).toEqual(['not met c: small']);
  });
});

/** TT for a part of its own: the neutral of the street is none of its matter (row uk-multiple-earth-rf-rod-bond, second-hand). */
describe('wires of a TT part on a TN-C-S site in the United Kingdom', () => {
  const part = (wire: string, { supply = ', supply: tt', from = 'db', lead = '', feeder = 'no' } = {}) =>
    `site: {name: Shack, region: uk, service: cu, supply: tn-c-s}
buildings: {house: {}, shack: {}}
electrodes: {tt-rod: {kind: rod}, rod: {kind: rod}}
bars: {bar: {kind: station ground bar, where: shack}}
equipment: {cu: {kind: service panel, where: house}, db: {kind: sub-panel, where: shack${supply}}}
lines: {feeder: {kind: mains, path: [cu, db], protective_conductor: ${feeder}}}
conductors: {c: {from: ${from}, to: tt-rod, wire: ${wire}, buried: no}${lead}}
`;
  const main = (text: string) => verdictsOf('main-bonding-size-iec', text);
  const earthing = (text: string) => verdictsOf('earthing-conductor-size-iec', text);

  it('from its panel to its electrode is the earthing conductor, and no main bond', () => {
    expect(main(part('6 mm2 copper insulated'))).toEqual([]);
    expect(earthing(part('6 mm2 copper insulated'))).toEqual(['met c: enough']);
    expect(earthing(part('4 mm2 copper insulated'))).toEqual(['not met c: small']);
  });

  it('keep the sizes of the supply where the panel stands on it', () => {
    expect(main(part('6 mm2 copper insulated', { supply: '' }))).toEqual(['not met c: small']);
    expect(earthing(part('6 mm2 copper insulated', { supply: '' }))).toEqual([]);
    expect(main(part('6 mm2 copper insulated', { feeder: 'yes' }))).toEqual(['not met c: small']);
  });

  it('that are bonds keep the plain sizes', () => {
    const lead = ', w: {from: bar, to: db, wire: 10 mm2 copper}';
    expect(main(part('6 mm2 copper', { from: 'bar', lead }))).toEqual(['met c: enough']);
    expect(main(part('5 mm2 copper', { from: 'bar', lead }))).toEqual(['not met c: small']);
  });

  it('cannot be told of between the two figures where nobody knows on which supply they are', () => {
    expect(main(part('6 mm2 copper', { from: 'bar' }))).toEqual(['cannot tell c: which part']);
    expect(main(part('10 mm2 copper', { from: 'bar' }))).toEqual(['met c: enough']);
    expect(main(part('5 mm2 copper', { from: 'bar' }))).toEqual(['not met c: small']);
  });
});

everyOutcome('earthing-conductor-size-iec');
everyOutcome('antenna-bonding-size-iec');
everyOutcome('surge-device-conductor');
everyOutcome('main-bonding-size-iec');
