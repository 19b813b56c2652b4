import { describe, expect, it } from 'vitest';
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
    expect(verdictsOf(rule, wire('24 mm2 copper', ', buried: 0.5 m'))).toEqual(['not met c: small']);
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

  it('has no word on protectors of mains and telephone', () => {
    expect(findingsOf(rule, lead('1.5 mm2 copper', '', 'mains protector')).outcome).toBe('not applicable');
    expect(findingsOf(rule, lead('1.5 mm2 copper', '', 'telephone protector')).outcome).toBe('not applicable');
  });
});

/** IEC 62305-4:2010 Table 1 (second-hand): 16, 6 and 1 mm² copper by class. */
it('surge-device-conductor: by the class of the protector', () => {
  const rule = 'surge-device-conductor';
  const lead = (wire: string, says = '') => `site: {name: Mains, region: iec, service: unknown}
bars: {main: {kind: main earthing bar}}
arresters: {spd: {kind: mains protector${says}}}
conductors: {c: {from: spd, to: main, wire: ${wire}}}
`;
  expect(verdictsOf(rule, lead('16 mm2 copper'))).toEqual(['met c: enough']);
  expect(verdictsOf(rule, lead('10 mm2 copper', ', test_class: I'))).toEqual(['not met c: small']);
  expect(verdictsOf(rule, lead('6 mm2 copper', ', test_class: II'))).toEqual(['met c: enough']);
  expect(verdictsOf(rule, lead('10 AWG copper', ', test_class: II'))).toEqual(['not met c: small']);
  expect(verdictsOf(rule, lead('1 mm2 copper', ', test_class: III'))).toEqual(['met c: enough']);
  expect(verdictsOf(rule, lead('0.9 mm2 copper'))).toEqual(['not met c: small']);
  expect(verdictsOf(rule, lead('6 mm2 copper'))).toEqual(['cannot tell c: class unknown']);
  expect(findingsOf(rule, lead('16 mm2 copper').replace('mains protector', 'gas tube')).outcome).toBe('not applicable');
});

/** IEC 60728-11 (second-hand): at least 2 m below the edge of the roof and at most 1.5 m from the wall; both must hold. */
describe('an antenna on the face of a building', () => {
  const arm = (
    below: string,
    out: string,
    lead = 'none',
  ) => `site: {name: Balcony, region: iec, units: m, service: unknown}
electrodes: {E1: {kind: rod}}
supports: {arm: {kind: building face, metal: aluminium}}
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

  it('inside the zone its lead is judged as a bond alone', () => {
    const lead = (wire: string) => arm('3 m', '1 m', `{c: {from: arm, to: E1, wire: ${wire}}}`);
    expect(verdictsOf('antenna-earthing-size-iec', lead('4 mm2 copper'))).toEqual(['met c: exempt']);
    expect(verdictsOf('antenna-bonding-size-iec', lead('4 mm2 copper'))).toEqual(['met c: enough']);
    expect(verdictsOf('antenna-bonding-size-iec', lead('2 mm2 copper'))).toEqual(['not met c: small']);
  });
});
